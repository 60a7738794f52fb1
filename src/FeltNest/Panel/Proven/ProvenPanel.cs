using System.Globalization;
using FeltNest.Ball;
using FeltNest.Ball.Ranges;
using FeltNest.Geometry;
using FeltNest.Numerics;
using FeltNest.Panel.Elastic;

namespace FeltNest.Panel.Proven;

/// <summary>Finds the neutral layer, the waist and the edge limit with which a ball's computed panel comes nearest to a measured
/// one.</summary>
/// <remarks>All else of the ball, its moduli and allowances included, is taken as given. An edge limit that does not act leaves no trace in
/// the outline: the fit without a limit is kept unless one with a limit is clearly nearer, and the greatest edge compression of the panel
/// is then the limit below which the outline shows none.</remarks>
internal static class ProvenPanel
{
    // Share of the measured outline's size (the radius of a disc of its area) by which it may be off, rms, and still be taken for a panel
    // of this ball: 1 mm on an ordinary one.
    private const double NearShare = 0.02;

    // Degree of the maps while the values are sought from afar: good to 0.001 mm.
    private const int SearchDegree = 21;

    // Degree at the end where felt lies askew to the panel, whose solves take ten times as long: good to 0.0005 mm.
    private const int AskewDegree = 25;

    // Edge limits tried first, as shares of what the edge takes up without one.
    private static readonly double[] Shares = [0.9, 0.5];

    // A limit acts where it lowers the rms to this share at least, and by as much as a panel's arcs are good for, mm.
    private const double NearerShare = 0.9;
    private const double NearerMm = 0.001;

    /// <summary>Fits a ball to an outline.</summary>
    /// <param name="ball">The ball; an elastic panel by a seam family.</param>
    /// <param name="outline">The measured outline, in any place and direction.</param>
    /// <param name="hold">Values that are known; null for none.</param>
    /// <exception cref="InputException">The ball's panel is not elastic, its seam is points, or nothing is left to find.</exception>
    /// <exception cref="NoAnswerException">The outline is nowhere near a panel of this ball.</exception>
    public static ProvenFit Fit(BallSpec ball, ArcOutline outline, ProvenHold? hold = null)
    {
        ProvenHold known = hold ?? ProvenHold.Nothing;
        Refuse(ball, known);
        MeasuredEdge measured = new(outline);
        double[] start = [ball.Felt.NeutralLayer, ball.Seam.WaistMm, known.EdgeLimit ? ball.Felt.MaxEdgeCompressionPercent : 100];
        int[] shape = [.. Enumerable.Range(0, 2).Where(i => !(i == 0 ? known.NeutralLayer : known.Waist))];
        bool mirror = PanelRequest.For(ball) is { Law.IsMirrorSymmetric: true, Seam.IsMirrorSymmetric: true };
        ProvenModel rough = new(ball, SearchDegree);
        ProvenModel fine = new(ball, mirror ? ElasticFlattening.UsualDegree : AskewDegree);
        ProvenState plain = new ProvenSearch(rough, measured, shape).Run(Begin(start))
            ?? throw new NoAnswerException("this ball has no panel to begin the fit with");
        bool mayLimit = ball.Panel.Edge == EdgeRule.Mated && !known.EdgeLimit;
        ProvenState? limited = mayLimit ? Limited(rough, measured, plain, [.. shape, 2]) : null;
        bool acts = limited is not null && limited.Rms < NearerShare * plain.Rms && limited.Rms < plain.Rms - NearerMm;
        int[] sought = acts ? [.. shape, 2] : shape;
        ProvenSearch last = new(fine, measured, sought);
        ProvenState found =
            last.Run(acts ? limited! : plain)
                ?? throw new NoAnswerException("the panel of this ball nearest to the outline could not be computed");
        double most = NearShare * Math.Sqrt(outline.Area / Math.PI);
        return found.Rms <= most
            ? Told(fine, last, found, sought, known.EdgeLimit, measured) with { Held = Held(ball, known) }
            : throw NowhereNear(found, acts, most);
    }

    private static List<ProvenValue> Held(BallSpec ball, ProvenHold known)
    {
        (bool IsHeld, string Name, FieldRange Range, double Value, string Unit)[] all =
        [
            (known.NeutralLayer, "neutral layer", BallRanges.NeutralLayer, ball.Felt.NeutralLayer, string.Empty),
            (known.Waist, "waist", BallRanges.WaistOn(ball.FittedRadiusMm), ball.Seam.WaistMm, "mm"),
            (known.EdgeLimit, "edge limit", BallRanges.MaxEdgeCompression, ball.Felt.MaxEdgeCompressionPercent, "%"),
        ];
        return
        [
            .. all.Where(value => value.IsHeld).Select(value => new ProvenValue
            {
                Name = value.Name,
                Field = value.Range.Field,
                Value = value.Value,
                Unit = value.Unit,
                Spread = 0,
                AtBound = null,
            }),
        ];
    }

    private static NoAnswerException NowhereNear(ProvenState found, bool acts, double mostMm)
    {
        string limit = acts ? FormattableString.Invariant($", edge limit {found.Values[2]:0.#} %") : string.Empty;
        return new NoAnswerException(string.Create(
            CultureInfo.InvariantCulture,
            $"the outline is nowhere near a panel of this ball: the nearest (neutral layer {found.Values[0]:0.##}, waist "
                + $"{found.Values[1]:0.#} mm{limit}) is off by {found.Rms:0.0} mm rms and {found.Off.Max(Math.Abs):0.0} mm at most; up "
                + $"to {mostMm:0.0} mm rms is taken for one. Check units, scale, ball and allowances"));
    }

    /// <summary>Refuses balls and held values that leave nothing to fit.</summary>
    /// <exception cref="InputException">They do.</exception>
    public static void Refuse(BallSpec ball, ProvenHold known)
    {
        if (known is { NeutralLayer: true, Waist: true })
        {
            throw new InputException(AskedFor.HeldValues, "neutral layer and waist are both held: one of them has to be left to find");
        }

        if (ball.Panel.Flattening != FlatteningMethod.Elastic)
        {
            throw new InputException(
                null, "panel.flattening",
                $"{EnumWord.Of(ball.Panel.Flattening)}; the fit is for elastic panels: neither neutral layer nor edge limit means "
                    + $"anything to another flattening's shape");
        }

        if (ball.Seam.Curve == SeamFamily.Points)
        {
            throw new InputException(
                null, "seam.curve", "points: a seam given as points has its own waist; the fit needs a family that takes waistMm");
        }
    }

    private static ProvenState Begin(double[] values) => new()
    {
        Values = values,
        Turn = 0,
        Move = default,
        Parameters = [],
        Feet = [],
        Outward = [],
        Off = [],
    };

    // The best fit with a limit that acts, from a limit just below what the edge takes up without one and from one far below.
    private static ProvenState? Limited(ProvenModel model, MeasuredEdge measured, ProvenState plain, int[] sought)
    {
        if (model.EdgeTakesUp(plain.Values) is not { } greatest)
        {
            return null;
        }

        ProvenSearch search = new(model, measured, sought);
        return Shares
            .Select(share => search.Run(plain with { Values = [plain.Values[0], plain.Values[1], share * greatest] }))
            .Where(state => state is not null && state.Values[2] < model.EdgeTakesUp(state.Values))
            .MinBy(state => state!.Rms);
    }

    private static ProvenFit Told(
        ProvenModel model, ProvenSearch search, ProvenState found, int[] sought, bool isLimitHeld, MeasuredEdge measured)
    {
        bool acts = sought.Contains(2);
        BallSpec ball = model.With(found.Values);
        FlatPanel panel = PanelFlattener.Flatten(ball);
        ProvenTrade[] trades = Trades(search, found, sought);
        List<ProvenValue> values = Values(ball, found, sought, trades);
        if (!acts && !isLimitHeld && ball.Panel.Edge == EdgeRule.Mated)
        {
            // Rounded up, so that the panel itself keeps it: what this outline shows the felt to take up, and nothing beyond.
            ball = ball with
            {
                Felt = ball.Felt with { MaxEdgeCompressionPercent = Math.Ceiling(100 * panel.Strain.EdgeMaxCompressionPercent) / 100 },
            };
        }

        ProvenDeviation[] deviations =
        [
            .. found.Off.Select((off, i) => new ProvenDeviation { Place = found.Feet[i], Outward = found.Outward[i], OffMm = off }),
        ];
        return new ProvenFit
        {
            Ball = ball,
            Panel = panel,
            Values = values,
            ShowsLimit = acts,
            Deviations = deviations,
            Trades = trades,
            TurnDeg = (found.Turn - measured.Axis) * 180 / Math.PI,
        };
    }

    // Directions in which the values change together, each as far as the outline leaves open.
    private static ProvenTrade[] Trades(ProvenSearch search, ProvenState found, int[] sought)
    {
        int count = sought.Length;
        (double Value, double[] Vector)[] directions = SymmetricEigen.Of(Seen(search.Columns(found), count), count);
        double tellable = Math.Max(ProvenFit.LeastTellableMm, found.Rms);

        // A direction the outline does not show at all still gets a finite spread: wider than any range.
        const double least = 1e-9;
        return [.. directions.Select(d =>
        {
            double singular = Math.Sqrt(Math.Max(d.Value, least * least));
            return new ProvenTrade(singular, [.. d.Vector.Select((part, i) => part * ProvenModel.Steps[sought[i]] * tellable / singular)]);
        })];
    }

    private static List<ProvenValue> Values(BallSpec ball, ProvenState found, int[] sought, ProvenTrade[] trades)
    {
        (string Name, string Unit, FieldRange Range)[] all =
        [
            ("neutral layer", string.Empty, BallRanges.NeutralLayer), ("waist", "mm", BallRanges.WaistOn(ball.FittedRadiusMm)),
            ("edge limit", "%", BallRanges.MaxEdgeCompression),
        ];
        return [.. sought.Select((value, i) => new ProvenValue
        {
            Name = all[value].Name,
            Field = all[value].Range.Field,
            Value = found.Values[value],
            Unit = all[value].Unit,
            Spread = Math.Sqrt(trades.Sum(trade => trade.Changes[i] * trade.Changes[i])),
            AtBound = End(found.Values[value], all[value].Range),
        })];
    }

    private static string? End(double value, FieldRange range)
    {
        if (value <= range.Low)
        {
            return FormattableString.Invariant($"at the least allowed, {range.Low}");
        }

        if (value >= range.High)
        {
            return FormattableString.Invariant($"at the greatest allowed, {range.High}");
        }

        return null;
    }

    // Mean products of the columns of the values, with what turning and moving the outline could make good taken out.
    private static double[] Seen(double[][] columns, int count)
    {
        List<double[]> rigid = [];
        foreach (double[] column in columns[count..])
        {
            double[] rest = Without(column, rigid);
            double length = Math.Sqrt(DenseRows.Dot(rest, rest));
            rigid.Add([.. rest.Select(value => value / length)]);
        }

        double[][] left = [.. columns[..count].Select(column => Without(column, rigid))];
        return [.. from a in left from b in left select DenseRows.Dot(a, b) / a.Length];
    }

    private static double[] Without(double[] column, List<double[]> directions)
    {
        double[] rest = [.. column];
        foreach (double[] direction in directions)
        {
            DenseRows.Add(rest, -DenseRows.Dot(rest, direction), direction);
        }

        return rest;
    }
}
