using System.Globalization;
using FeltNest.Die;
using FeltNest.Die.Gang;
using FeltNest.Die.Order;
using FeltNest.Geometry;
using FeltNest.Rolls;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>The column of figures of a gang: how it is struck, gaps, rule, board and force.</summary>
internal static class GangFigures
{
    /// <summary>Names and values in order.</summary>
    public static List<(string, string)> Lines(DieDesign design) =>
        [.. Struck(design), .. Gaps(design), .. Made(design), .. Force(design)];

    /// <summary>Lines on the force.</summary>
    public static IEnumerable<(string, string)> Force(DieDesign design)
    {
        DieOrder order = design.Request.Order;
        bool measured = order.Force.Basis == ForceBasis.Measured;
        string figure = $"{F(design.Force.Kn, "0.0")} kN ({F(design.Force.TonnesForce, "0.0")} t)";
        yield return measured
            ? ("force of a strike (measured N/mm)", figure)
            : ("FORCE NOT MEASURED: do not set the press from this", $"{figure}, placeholder");
        yield return design.Request.Press is { } press ? Press(design, press, measured) : ("press", "none given");
    }

    private static (string, string) Press(DieDesign design, PressSpec press, bool measured)
    {
        string named = $"press {press.Name}, {F(press.RatedForceKn, "0.#")} kN";
        return measured
            ? ($"share of {named} (allowed {F(press.AllowedSharePercent, "0.#")} %)", $"{F(design.PressSharePercent!.Value, "0.0")} %")
            : (named, "not assessed: force not measured");
    }

    private static IEnumerable<(string, string)> Struck(DieDesign design)
    {
        DieGang gang = design.Gang;
        DieOrder order = design.Request.Order;
        string repeats = gang.Repeats == 1 ? "1 repeat" : $"{gang.Repeats} repeats";
        string viewer = order.DieView ? "away from" : "towards";
        return
        [
            ($"{DieParts.Named(design)}: {gang.Cavities.Count} cavities", string.Empty),
            ("feed after the die was struck at every place", $"{F(gang.FeedMm, "0.000")} mm ({repeats})"),
            (
                "pitch of the layout along x; felt",
                $"{F(gang.FeedMm / gang.Repeats, "0.000")} mm; warp and feed toward {order.SeenSign(true)}x, nap side {viewer} the viewer"),
            ("pitches of rows across", GangDimensions.RowWords(gang)),
            ("nap", Nap(design)),
            ("strikes to one feed", Places(design)),
            ("board's lower left corner over the lower selvedge", $"{F(gang.Origin.Y)} mm across"),
            ("cut edges along x across", $"{F(gang.EdgeLengthMm)} x {F(gang.EdgeWidthMm)} mm"),
        ];
    }

    private static string Places(DieDesign design)
    {
        DieGang gang = design.Gang;
        if (gang.Places.Count == 1)
        {
            string spanned = design.Request.Layout.Bands.Count == 1 ? "usable width" : "band";
            return $"1: it spans the {spanned}";
        }

        Point2 second = gang.Places[1];
        double along = design.Request.Order.DieView ? -second.X : second.X;
        return $"{gang.Places.Count}, moved across by {F(second.Y, "0.000")} mm each, along by {F(along, "0.000")}";
    }

    private static IEnumerable<(string, string)> Gaps(DieDesign design) =>
    [
        (
            "least gap in the die; between strikes, worst case",
            $"{DieParts.Mm(design.LeastGapMm)} mm; {DieParts.Mm(design.Joint.NominalMm)}, {DieParts.Mm(design.Joint.WorstMm)} mm"),
        (
            "least gap to strikes beside; to bands beside; worst",
            $"{WithWorst(design.Joint.AcrossMm, design.Joint.AcrossWorstMm)}; {WithWorst(design.Joint.BandMm, design.Joint.BandWorstMm)}"),
    ];

    private static IEnumerable<(string, string)> Made(DieDesign design)
    {
        DieGang gang = design.Gang;
        DieOrder order = design.Request.Order;
        string common = gang.Common.SharedMm > 0 ? $", {F(gang.Common.SharedMm / 1000, "0.000")} common" : string.Empty;
        return
        [
            ("least radius of the edge", $"{DieParts.Mm(design.LeastRadiusMm)} mm"),
            (
                "rule",
                $"{F(order.Rule.Points, "0.#")} pt ({F(order.Rule.ThicknessMm, "0.##")} x {F(order.Rule.HeightMm, "0.#")} mm), "
                    + $"{F(design.RuleLengthMm / 1000, "0.000")} m by its middle{common}"),
            ("cutting edge", $"{F(design.EdgeLengthMm / 1000, "0.000")} m"),
            ("board, about", $"{order.Board.Material}, {F(order.Board.ThicknessMm, "0.#")} mm; die {F(design.MassKg, "0.0")} kg"),
            (
                "load centre x, y; load centre to bed centre",
                $"{F(LoadCentreX(order, gang), "0.0")}, {F(gang.LoadCentre.Y, "0.0")}; {OffBed(design)}"),
        ];
    }

    private static double LoadCentreX(DieOrder order, DieGang gang) =>
        order.DieView ? gang.BoardLengthMm - gang.LoadCentre.X : gang.LoadCentre.X;

    private static string OffBed(DieDesign design)
    {
        if (design.Request.Press is null)
        {
            return "no press given";
        }

        Point2 off = design.Gang.LoadOffBed;
        double x = Math.Round(design.Request.Order.DieView ? -off.X : off.X, 1) + 0.0;
        return $"{F(x, "0.0")}, {F(Math.Round(off.Y, 1) + 0.0, "0.0")} mm";
    }

    // Where no strike stands beside, or no band, there is no gap.
    private static string WithWorst(double gapMm, double worstMm) =>
        double.IsFinite(gapMm) ? $"{DieParts.Mm(gapMm)}, {DieParts.Mm(worstMm)} mm" : "none";

    // A lay that goes one way needs the nap; any other is only told it.
    private static string Nap(DieDesign design)
    {
        if (design.Request.Order.Nap is not null)
        {
            return DieParts.Nap(design.Request.Order);
        }

        if (design.Request.Layout.Rules.OneWay)
        {
            return "not stated: a one-way layout, so ask before striking";
        }

        return DieParts.Nap(design.Request.Order);
    }

    private static string F(double value, string format = "0.00") => value.ToString(format, CultureInfo.InvariantCulture);
}
