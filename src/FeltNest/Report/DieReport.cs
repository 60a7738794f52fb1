using System.Globalization;
using FeltNest.Die;
using FeltNest.Die.Edge;
using FeltNest.Die.Gang;
using FeltNest.Die.Order;
using FeltNest.Rolls;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>What a die prints.</summary>
internal static class DieReport
{
    /// <summary>The text, lines ending in a line feed.</summary>
    public static string Text(DieDesign design)
    {
        TextTable table = new();
        Gang(table, design);
        foreach (int part in design.Parts)
        {
            Edge(table, design, part);
        }

        Rule(table, design);
        Gaps(table, design);
        Force(table, design);
        table.Heading("Cautions");
        foreach (string line in SafetyWords.Brief)
        {
            table.Note(line);
        }

        return table.ToString();
    }

    private static void Gang(TextTable table, DieDesign design)
    {
        DieGang gang = design.Gang;
        DieOrder order = design.Request.Order;
        string repeats = gang.Repeats == 1 ? "1 repeat" : Invariant($"{gang.Repeats} repeats");
        string struck = gang.Places.Count == 1
            ? $"{repeats} of the layout"
            : Invariant($"struck at {gang.Places.Count} places across to one feed");
        string nap = order.Nap switch
        {
            NapDirection.Forward => $"toward {order.SeenSign(true)}x, with the feed",
            NapDirection.Backward => $"toward {order.SeenSign(false)}x, against the feed",
            _ => "not stated",
        };
        table.Heading($"Gang die {order.Name}")
            .Line("cavities", F(gang.Cavities.Count, "0"), struck)
            .Line("feed", gang.FeedMm, "0.000", "mm")
            .Line(
                "board along x across", Invariant($"{gang.BoardLengthMm:0} x {gang.BoardWidthMm:0} mm"),
                Invariant($"about {design.MassKg:0.0} kg with its rule"))
            .Line("nap", nap, design.Request.Layout.Rules.OneWay ? "the layout goes one way" : string.Empty)
            .Line(
                "load centre to bed centre",
                design.Request.Press is null ? "no press given" : Invariant($"{gang.LoadOffBed.X:0.0}, {gang.LoadOffBed.Y:0.0} mm"));
    }

    private static void Edge(TextTable table, DieDesign design, int part)
    {
        DieEdge edge = design.Edges[part]!;
        int cavities = design.Gang.Cavities.Count(c => c.Placed.Part == part);
        table.Heading(
            design.Letter(part) is { Length: > 0 } letter
                ? Invariant($"Edge of part {letter}, {cavities} cavities")
                : "Edge of a cavity")
            .Line("arcs", F(edge.Pieces.Count, "0"), Invariant($"tangent, {edge.Corners.Count} corners"))
            .Line(
                "off the true outline", edge.DeviationMm, "0.0000", "mm",
                Invariant(
                    $"at most; {edge.OffLayoutMm:0.0000} measured against the layout, {edge.LayoutOffMm:0.##} is the layout's own"))
            .Line("length of rule", design.RingMm(part), "0.000", "mm", "one cavity, middle line of its body")
            .Line("length of cutting edge", edge.Arcs.Perimeter, "0.000", "mm", "one cavity");
    }

    private static void Rule(TextTable table, DieDesign design) => table.Heading("Rule")
        .Line(
            "least radius", design.LeastRadiusMm, "0.00", "mm",
            Invariant($"the rule takes an inside bend of {design.Request.Order.Rule.LeastBendMm:0.##}"))
        .Line("length of rule", design.RuleLengthMm / 1000, "0.000", "m", "middle line of its body")
        .Line("length of cutting edge", design.EdgeLengthMm / 1000, "0.000", "m", "the force acts on it");

    private static void Gaps(TextTable table, DieDesign design)
    {
        DieOrder order = design.Request.Order;
        table.Heading("Gaps")
            .Line(
                "in the die", design.LeastGapMm, "0.000", "mm",
                Invariant($"rule and ejection want {order.Rule.LeastGapMm(order.Ejection.RoomMm):0.00}"))
            .Line("between strikes", design.Joint.NominalMm, "0.000", "mm")
            .Line(
                "between strikes, worst", design.Joint.WorstMm, "0.000", "mm",
                Invariant(
                    $"feed off by {design.Joint.FeedToleranceMm:0.##}, guide by {design.Joint.GuideToleranceMm:0.##} each, edges and "
                        + $"places at their limits of {design.Joint.EdgeProfileMm:0.##} and {design.Joint.PositionMm:0.##}"));
        int bands = design.Request.Layout.Bands.Count;
        if (design.Gang.Places.Count == 1)
        {
            table.Line("strikes side by side", "none", bands == 1 ? "one strike spans the usable width" : "one strike spans the band");
        }
        else
        {
            table.Line(
                "to the strike beside, worst", design.Joint.AcrossWorstMm, "0.000", "mm",
                Invariant($"{design.Joint.AcrossMm:0.000} in place; two strikes may err across by twice the guide"));
        }

        if (bands > 1)
        {
            table.Line(
                "to the band beside, worst", design.Joint.BandWorstMm, "0.000", "mm",
                Invariant($"{design.Joint.BandMm:0.000} in place; another die, at any place along"));
        }
    }

    private static void Force(TextTable table, DieDesign design)
    {
        DieOrder order = design.Request.Order;
        table.Heading("Force of a strike")
            .Line("edge alone", design.Force.BareKn, "0.0", "kN")
            .Line(
                "with all added", design.Force.Kn, "0.0", "kN",
                Invariant(
                    $"{design.Force.TonnesForce:0.0} t; {design.Force.CloseAddedMm / design.Force.EdgeMm * 100:0} % for close rules, "
                        + $"{order.Force.EjectionPercent:0.#} % ejection, {order.Force.ReservePercent:0.#} % reserve"));
        if (order.Force.Basis == ForceBasis.Placeholder)
        {
            table.Line(
                "press", design.DoNotRun is null ? "not assessed: force not measured" : "DO NOT RUN",
                design.DoNotRun ?? "NOT MEASURED: do not set the press from this");
        }
        else if (design.Request.Press is { } press)
        {
            table.Line(
                "share of the press", design.PressSharePercent!.Value, "0.0", "%",
                Invariant($"{press.AllowedSharePercent:0.#} % of {press.RatedForceKn:0.#} kN is allowed"));
        }
        else
        {
            table.Line("press", "none given");
        }
    }

    private static string F(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
