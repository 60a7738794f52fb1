using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Rolls.Orders.Clock;

/// <summary>Writes timed pieces down as the work of a plan.</summary>
internal static class TimedPlan
{
    /// <summary>The work, press by press in order of time; where on their rolls is not said yet.</summary>
    public static List<OrderCut> Cuts(OrderRequest question, ClockResult result)
    {
        List<OrderCut> cuts = [];
        foreach ((int piece, PressSpec press) in InOrder(question, result))
        {
            CutPiece cut = result.Shop.Pieces[piece];
            cuts.Add(new OrderCut
            {
                Number = cuts.Count + 1,
                Order = cut.Order,
                Roll = cut.Roll,
                Die = cut.Die,
                Press = press,
                Strikes = cut.Strikes,
                GoodBalls = cut.BallsIn(question),
                AlsoBalls = cut.Die.Shape.AlsoBallsOf(cut.Strikes, question.GoodShare(cut.Roll, cut.Die)),
                FromM = 0,
                RollChange = result.Times.RollChange[piece],
                StartHour = result.Times.Start[piece],
                EndHour = result.Times.End[piece],
            });
        }

        return cuts;
    }

    /// <summary>Dies put on presses, press by press in order of time.</summary>
    public static List<Mounting> Mountings(OrderRequest question, ClockResult result) =>
    [
        .. InOrder(question, result).Where(one => result.Times.Mounts[one.Piece]).Select(one => new Mounting
        {
            Die = result.Shop.Pieces[one.Piece].Die,
            Press = one.Press,
            StartHour = result.Times.MountStart[one.Piece],
            EndHour = result.Times.MountEnd[one.Piece],
            Paid = result.Times.Paid[one.Piece],
        }),
    ];

    /// <summary>Overtime that is worked, press by press.</summary>
    public static List<OvertimeWork> Overtime(OrderRequest question, ClockResult result)
    {
        List<OvertimeWork> worked = [];
        for (int press = 0; press < question.Presses.Count; press++)
        {
            PressSpec spec = question.Presses[press];
            OpenHours open = result.Shop.Open[press];
            IReadOnlyList<OvertimeSpan> overtime = question.CalendarOf(spec).Overtime;
            worked.AddRange(
                InOrder(question, result).Where(one => one.Press == spec)
                    .SelectMany(one => Busy(result, open, press, one.Piece))
                    .SelectMany(span => open.OvertimeIn(span.From, span.To))
                    .GroupBy(part => part.Overtime)
                    .OrderBy(part => part.Key)
                    .Select(part => new OvertimeWork(spec, overtime[part.Key], part.Sum(one => one.Hours))));
        }

        return worked;
    }

    /// <summary>What each die does, in the order in which they are first used, press by press.</summary>
    public static List<DieWork> Dies(List<OrderCut> cuts, List<Mounting> mountings) =>
    [
        .. cuts.GroupBy(cut => cut.Die).Select(work => new DieWork(
            work.Key, work.MinBy(cut => cut.StartHour)!.Press, work.Sum(cut => cut.Strikes))
        {
            Mountings = mountings.Count(mounting => mounting.Die == work.Key),
        }),
    ];

    // Mounting, roll change and strikes of a piece.
    private static IEnumerable<(double From, double To)> Busy(ClockResult result, OpenHours open, int press, int piece)
    {
        PieceTimes times = result.Times;
        if (times.Mounts[piece])
        {
            yield return (times.MountStart[piece], times.MountEnd[piece]);
        }

        if (times.RollChange[piece])
        {
            yield return (open.Back(times.Start[piece], result.Shop.RollHours[press]), times.Start[piece]);
        }

        yield return (times.Start[piece], times.End[piece]);
    }

    private static IEnumerable<(int Piece, PressSpec Press)> InOrder(OrderRequest question, ClockResult result) =>
        Enumerable.Range(0, question.Presses.Count).SelectMany(press =>
            Enumerable.Range(0, result.PressOf.Length)
                .Where(piece => result.PressOf[piece] == press && result.Times.Placed[piece])
                .OrderBy(piece => result.Times.Start[piece])
                .ThenBy(piece => result.Times.End[piece])
                .Select(piece => (piece, question.Presses[press])));
}
