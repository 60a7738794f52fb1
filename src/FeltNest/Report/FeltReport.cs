using FeltNest.Ball.Passport;
using FeltNest.Ball.Ranges;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>The table that the readings of a lot of felt print.</summary>
internal static class FeltReport
{
    /// <summary>The text, lines ending in a line feed.</summary>
    public static string Text(FeltPassport felt)
    {
        TextTable table = new();
        table.Heading($"{felt.Felt}, lot {felt.Lot.Name}: measured until {felt.Lot.Date}");
        foreach ((FeltQuantity quantity, FeltValue value) in felt.Values.OrderBy(one => one.Key))
        {
            table.Line(PassportWords.Title(quantity), Alone(value, FeltValues.RangeOf(quantity)), Spread(value));
        }

        if (felt.ShearGain is { } gain)
        {
            table.Note(Invariant($"Shear follows from strips at 0, 45 and 90 degrees: 1 % of the bias modulus is {gain:0.00} % of it."));
        }

        Curves(table, felt);
        Edge(table, felt.Edge);
        if (felt.Remarks.Count > 0)
        {
            table.Heading("To be told");
        }

        foreach (string remark in felt.Remarks)
        {
            table.Note(remark);
        }

        return table.ToString();
    }

    private static string Alone(FeltValue value, FieldRange range) =>
        $"{PassportWords.Digits(value, value.Value)} {range.Unit}".TrimEnd();

    private static string Spread(FeltValue value)
    {
        if (value.Interval is not { } interval)
        {
            return $"lower end of a bracket, {value.Specimens} discs";
        }

        string half = $"+- {PassportWords.Digits(value, interval)} (95 %)";
        return value.SpecimenSpread is { } spread
            ? $"{half}, {value.Specimens} with sd {PassportWords.Digits(value, spread)}"
            : $"{half}, follows from others";
    }

    private static void Curves(TextTable table, FeltPassport felt)
    {
        if (felt.Curves.Count == 0)
        {
            return;
        }

        table.Heading(
            Invariant($"Strips between {felt.Lot.FromPercent:0.##} and {felt.Lot.ToPercent:0.##} % of strain, N/mm"))
            .Row($"{"strips",-20}{"straight E",17}{"bent E",9}{"bend b",16}{"chance",9}  verdict");
        foreach (FeltCurve curve in felt.Curves)
        {
            string verdict = curve.Bends ? "bends" : "straight";
            string straight = Invariant($"{curve.Straight.Value:0.000} +- {curve.Straight.Interval:0.000}");
            string bend = Invariant($"{curve.Bend.Value:0.00} +- {curve.Bend.Interval:0.00}");
            table.Row(
                $"{CurveFit.Words(curve.Direction, curve.InTension),-20}{straight,17}{Invariant($"{curve.Initial.Value:0.000}"),9}"
                    + $"{bend,16}{Chance(curve.Chance),9}  {verdict}");
        }

        table.Note(
            Invariant($"Straight: N = c + E e. Bent: N = c + E e (1 + b e). The ball gets the straight E. The panel's law is linear ")
                + Invariant($"between tension and Green strain: b = {PassportWords.PanelBend:0.0}."));
    }

    private static string Chance(double chance) => chance < 0.0005 ? "< 0.001" : Invariant($"{chance:0.000}");

    private static void Edge(TextTable table, FeltEdge? edge)
    {
        if (edge is null)
        {
            return;
        }

        table.Heading("Edge limit, % of flat length")
            .Line("lay flat up to", edge.FlatPercent, "0.0", "%", Invariant($"disc of {edge.Flat.DiscDiameterMm:0.#} mm: the ball gets it"))
            .Line(
                "puckered from", edge.PuckeredPercent, "0.0", "%",
                edge.Puckered is { } disc ? Invariant($"disc of {disc.DiscDiameterMm:0.#} mm") : "no disc puckered beyond all flat ones")
            .Line(
                "may still pucker", edge.PuckerShareAtMostPercent, "0", "%",
                Invariant($"of discs of the flat size, at most: {edge.FlatDiscs} lay flat (95 in 100)"));
    }
}
