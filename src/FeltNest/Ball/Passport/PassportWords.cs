using System.Globalization;
using FeltNest.Ball.Ranges;
using static FeltNest.InvariantText;

namespace FeltNest.Ball.Passport;

/// <summary>What has to be told of the readings of a lot.</summary>
internal static class PassportWords
{
    /// <summary>Strips a direction that the standards of the test ask for.</summary>
    public const int StripsAsked = 5;

    /// <summary>Length between the jaws of those standards, mm.</summary>
    public const double GaugeMm = 200;

    /// <summary>Widths of their strips, mm.</summary>
    public static IReadOnlyList<double> WidthsMm { get; } = [50, 25];

    /// <summary>Bend of the law that panels are computed with: linear between tension and Green strain, e + e2/2 times 1 + e.</summary>
    public const double PanelBend = 1.5;

    /// <summary>Sentences, the gravest first.</summary>
    public static IEnumerable<string> Remarks(
        FeltReadings readings, IReadOnlyDictionary<FeltQuantity, FeltValue> values, IReadOnlyList<FeltCurve> curves, FeltEdge? edge) =>
    [
        .. Discs(edge),
        .. curves.Where(curve => curve.Bends).Select(Bends),
        .. Strips(readings, curves),
        .. Missing(values),
    ];

    /// <summary>The name that a ball file has for a figure, without what it stands in.</summary>
    public static string NameOf(FeltQuantity quantity)
    {
        FieldRange range = FeltValues.RangeOf(quantity);
        return range.Field[(range.Field.LastIndexOf('.') + 1)..];
    }

    /// <summary>A figure with its 95 % interval and its unit, as tables and sheets show it.</summary>
    public static string Figure(FeltValue value, FieldRange range)
    {
        string unit = range.Unit.Length > 0 ? " " + range.Unit : string.Empty;
        string half = value.Interval is { } interval ? " +- " + Digits(value, interval) : string.Empty;
        return Digits(value, value.Value) + half + unit;
    }

    /// <summary>A number with the digits that a figure's interval is worth: two of the interval.</summary>
    public static string Digits(FeltValue value, double number)
    {
        const int usual = 1;
        const int most = 5;
        int decimals = value.Interval > 0 ? Math.Clamp(1 - (int)Math.Floor(Math.Log10(value.Interval.Value)), 0, most) : usual;
        return number.ToString(decimals == 0 ? "0" : "0." + new string('0', decimals), CultureInfo.InvariantCulture);
    }

    /// <summary>What a figure is called in tables and on sheets.</summary>
    public static string Title(FeltQuantity quantity) => quantity switch
    {
        FeltQuantity.Thickness => "thickness as cut",
        FeltQuantity.MassPerArea => "mass per area",
        FeltQuantity.WarpModulus => "modulus along the warp",
        FeltQuantity.WeftModulus => "modulus along the weft",
        FeltQuantity.ShearModulus => "shear modulus",
        FeltQuantity.Poisson => "Poisson's ratio",
        FeltQuantity.NeutralLayer => "neutral layer",
        FeltQuantity.EdgeLimit => "edge limit",
        FeltQuantity.ShrinkWarp => "cure shrinkage, warp",
        _ => "cure shrinkage, weft",
    };

    private static IEnumerable<string> Discs(FeltEdge? edge)
    {
        if (edge is { Contradict: true })
        {
            yield return "Discs contradict each other: one lay flat at more compression than another puckered at. The bracket is wide.";
        }

        if (edge is { Puckered: null, Contradict: false })
        {
            yield return Invariant($"No disc puckered: the edge limit is at least {edge.FlatPercent:0.0} %, and may be more.");
        }
    }

    private static string Bends(FeltCurve curve) =>
        Invariant($"{Begun(CurveFit.Words(curve.Direction, curve.InTension))}: the curve bends, b = {curve.Bend.Value:0.00} +- ")
            + Invariant($"{curve.Bend.Interval:0.00} in N = c + E e (1 + b e), E = {curve.Initial.Value:0.000} N/mm. The ball gets the ")
            + Invariant($"straight law; the panel's own law has b = {PanelBend:0.0}.");

    private static IEnumerable<string> Strips(FeltReadings readings, IReadOnlyList<FeltCurve> curves)
    {
        foreach (FeltCurve curve in curves.Where(curve => curve.Straight.Specimens < StripsAsked))
        {
            yield return $"{Begun(CurveFit.Words(curve.Direction, curve.InTension))}: {curve.Straight.Specimens} strips; the standards "
                + $"ask "
                + $"for {StripsAsked}.";
        }

        if (readings.Strips.Any(r => r.ExtensionMm > 0 && (r.GaugeMm != GaugeMm || !WidthsMm.Contains(r.WidthMm))))
        {
            yield return Invariant(
                $"Strips in tension are not all {WidthsMm[0]:0} or {WidthsMm[1]:0} mm wide and {GaugeMm:0} mm long between ")
                + "the jaws, as ISO 9073-3 has it: write that beside the figures.";
        }

        if (curves.Any(curve => !curve.InTension))
        {
            yield return "Moduli in compression are told and not used: a panel has one modulus a direction, that of tension.";
        }
    }

    private static IEnumerable<string> Missing(IReadOnlyDictionary<FeltQuantity, FeltValue> values)
    {
        string[] missing = [.. Enum.GetValues<FeltQuantity>().Where(one => !values.ContainsKey(one)).Select(NameOf)];
        if (missing.Length > 0)
        {
            yield return $"Not measured: {string.Join(", ", missing)}. A ball that names this file has to give them itself.";
        }
    }

    private static string Begun(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
