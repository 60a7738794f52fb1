using FeltNest.Ball;
using FeltNest.Layout;
using FeltNest.Seam;

namespace FeltNest.Design.SeamDesign;

/// <summary>Designs seams for the least felt at each limit of stretch, and sets the families that have a waist alone beside them.</summary>
internal static class SeamFrontStudy
{
    /// <summary>Most limits of one study.</summary>
    public const int MostLimits = 50;

    /// <summary>Fewest and most waves of a shaped seam: with its waist three to eight numbers.</summary>
    public static (int Fewest, int Most) WaveCount => (2, 7);

    private static readonly SeamFamily[] Plain = [SeamFamily.TwoHarmonic, SeamFamily.FourArc, SeamFamily.Elastica];

    /// <summary>Orders of a number of waves. The wave of order 2 is left out: it is the waist over again.</summary>
    /// <param name="waves">How many.</param>
    /// <param name="unmirrored">Whether waves that keep the half-turn alone are among them: then every even order from 4 on is.</param>
    public static IReadOnlyList<int> Orders(int waves, bool unmirrored) =>
        [.. Enumerable.Range(0, waves).Select(i => unmirrored ? 4 + (2 * i) : 6 + (4 * i))];

    /// <summary>Runs a design.</summary>
    /// <param name="question">Ball and limits.</param>
    /// <param name="lay">The question to the layout engine for a part.</param>
    /// <param name="progress">Told each shaped seam as it is measured; may be null.</param>
    /// <param name="stop">Ends the design with the marks done so far.</param>
    /// <exception cref="InputException">The ball's panel is not elastic, or its angle to the warp shall be found where any
    /// serves.</exception>
    /// <exception cref="NoAnswerException">The ball has no panel that fits the roll, or no shaped seam keeps any of the limits.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the first seam was done.</exception>
    public static SeamFront Run(
        SeamQuestion question, Func<LayoutPart, LayoutRequest> lay, IProgress<SeamMark>? progress = null, CancellationToken stop = default)
    {
        BallSpec ball = question.Ball;
        Require(question);
        SeamMeasuring measuring = new(lay, LayoutSearch.Of);
        (SeamChoice given, LayoutRequest roll, _) = measuring.Of(ball, stop);
        stop.ThrowIfCancellationRequested();
        double waist = ball.FittedRadiusMm * SeamCurve.For(ball.Seam, ball.FittedRadiusMm).WaistAngle;
        IReadOnlyList<int> orders = Orders(question.Waves, question.Unmirrored);
        Task<FrontPart[]> plain = Task.Run(
            () => Plain.Select(family => PartOf(SeamVariables.OfFamily(ball, family), null)).ToArray(), CancellationToken.None);
        FrontPart shaped = PartOf(SeamVariables.Shaped(ball, orders), progress);
        if (question.TurnsWarp)
        {
            shaped = shaped.Better(PartOf(SeamVariables.Shaped(ball, orders, turnsWarp: true), progress));
        }

        FrontPart[] parts = [shaped, .. plain.GetAwaiter().GetResult()];
        if (shaped.Marks.Count == 0)
        {
            throw shaped.Unanswered.Count > 0
                ? new NoAnswerException(shaped.Unanswered[^1].Reason) : new OperationCanceledException(stop);
        }

        return new SeamFront
        {
            Question = question,
            Roll = roll,
            Given = given,
            Marks = [.. parts.SelectMany(part => Falling(part.Marks))],
            Unanswered = [.. parts.SelectMany(part => part.Unanswered)],
            Solves = parts.Sum(part => part.Solves),
            CutShort = stop.IsCancellationRequested,
        };

        FrontPart PartOf(SeamVariables variables, IProgress<SeamMark>? told) =>
            FrontPart.Of(new SeamFamilyFront(variables, question, measuring), variables.Family, question, waist, roll, told, stop);
    }

    private static void Require(SeamQuestion question)
    {
        PanelSpec panel = question.Ball.Panel;
        if (panel.Flattening != FlatteningMethod.Elastic)
        {
            throw new InputException(
                null, "panel.flattening", $"{EnumWord.Of(panel.Flattening)}; seams are designed for elastic panels, which know strain");
        }

        if (question.TurnsWarp && panel.WarpAngleDeg is null)
        {
            throw new InputException(
                AskedFor.WarpAngle, "'joint' needs felt with a warp: the ball's panel.warpAngleDeg is 'any', so no angle is better");
        }
    }

    // A seam that keeps a limit keeps every greater one: what was found for less stretch stands where more found nothing better.
    private static IEnumerable<SeamMark> Falling(List<SeamMark> marks)
    {
        SeamMark? best = null;
        foreach (SeamMark mark in marks)
        {
            best = best is null ? mark : mark with
            {
                Plane = mark.Plane.PlaneSquareMetres < best.Plane.PlaneSquareMetres ? mark.Plane : best.Plane,
                Roll = mark.Roll.RollSquareMetres < best.Roll.RollSquareMetres ? mark.Roll : best.Roll,
            };
            yield return best;
        }
    }

    // The marks of one family, the least limit first.
    private sealed record FrontPart(
        List<SeamMark> Marks, List<(double StretchLimitPercent, SeamFamily Curve, string Reason)> Unanswered, int Solves)
    {
        // Of two searches for the same limits the better mark of each; a limit that one of them answers is answered.
        public FrontPart Better(FrontPart other)
        {
            SeamMark[] all = [.. Marks.Concat(other.Marks)];
            return new FrontPart(
                [
                    .. all.GroupBy(mark => mark.StretchLimitPercent).OrderBy(marks => marks.Key).Select(marks => marks.First() with
                    {
                        Plane = marks.Select(mark => mark.Plane).MinBy(choice => choice.PlaneSquareMetres)!,
                        Roll = marks.Select(mark => mark.Roll).MinBy(choice => choice.RollSquareMetres)!,
                    }),
                ],
                [.. Unanswered.Where(none => all.All(mark => mark.StretchLimitPercent != none.StretchLimitPercent))],
                Solves + other.Solves);
        }

        public static FrontPart Of(
            SeamFamilyFront front, SeamFamily family, SeamQuestion question, double waist, LayoutRequest roll, IProgress<SeamMark>? told,
            CancellationToken stop)
        {
            FrontPart part = new([], [], 0);
            string? lost = null;
            foreach (double limit in question.StretchLimitsPercent.Reverse())
            {
                try
                {
                    if (part.Marks.Count == 0 && lost is null)
                    {
                        front.Begin(waist, roll, stop);
                    }

                    SeamMark mark = lost is null ? front.Mark(limit, stop) : throw new NoAnswerException(lost);

                    // A mark that was cut short would make its seam look worse than it is: it is left out.
                    if (stop.IsCancellationRequested)
                    {
                        break;
                    }

                    part.Marks.Insert(0, mark);
                    told?.Report(mark);
                }
                catch (NoAnswerException none)
                {
                    // A limit that is not kept leaves none below it that is.
                    lost = none.Message;
                    part.Unanswered.Insert(0, (limit, family, none.Message));
                }
            }

            return part with { Solves = front.Solves };
        }
    }
}
