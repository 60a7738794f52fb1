using FeltNest.Die;
using FeltNest.Die.Bend;
using FeltNest.Files.Csv;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Dies;

/// <summary>Columns of <c>rule.csv</c>: a line for each piece of rule, each bend and each notch, in order along the flat piece.</summary>
internal static class RuleListing
{
    private const string Piece = "piece";
    private const string Bend = "bend";
    private const string Notch = "notch";

    public static readonly ResultColumns<Line> Columns = new ResultColumns<Line>("rule.csv")
        .Text(new TextField("strip", "letter of the part, if any, and number of the piece"), l => l.Strip)
        .Text(new TextField("what", "piece, bend or notch"), l => l.What)
        .Number(new NumberField("fromMm", "along the flat piece from the joint"), l => Fine(l.FromMm))
        .Number(new NumberField("toMm", "of a piece its length when flat"), l => Fine(l.ToMm))
        .Number(new NumberField("middleMm", "of a piece the middle line of its body when bent"), l => Fine(l.MiddleMm))
        .Number(new NumberField("angleDeg", "of a bend in the die"), l => Fine(l.AngleDeg))
        .Text(new TextField("toward", "panel or waste"), l => l.Toward)
        .Number(new NumberField("insideRadiusMm", "of a bend in the die"), l => Fine(l.InsideRadiusMm))
        .Number(new NumberField("setAngleDeg", "to form before it springs back; blank where unknown"), l => Fine(l.SetAngleDeg))
        .Number(new NumberField("setRadiusMm", "inside radius to form; blank where unknown"), l => Fine(l.SetRadiusMm))
        .Number(new NumberField("startMitreDeg", "of a piece, off square; blank for a square end"), l => Fine(l.StartMitreDeg))
        .Number(new NumberField("endMitreDeg", "the same of its end"), l => Fine(l.EndMitreDeg))
        .Number(new NumberField("heightMm", "of a piece") { Unit = "mm" }, l => l.HeightMm)
        .Number(new NumberField("thicknessMm", "of a piece"), l => l.ThicknessMm)
        .Text(new TextField("bevel", "of a piece"), l => l.Bevel)
        .Number(new NumberField("count", "of a piece in one die"), l => l.Count);

    // A hundredth of a micrometre hides the rounding of sums.
    private static double? Fine(double? value) => value is { } number ? Math.Round(number, 5) : null;

    /// <summary>The lines of a die.</summary>
    public static IEnumerable<Line> Lines(DieDesign design) => design.Strips.SelectMany(strip =>
    {
        string name = Name(design, strip);
        return Parts(strip, name).OrderBy(l => l.FromMm).Prepend(new Line
        {
            Strip = name,
            What = Piece,
            FromMm = 0,
            ToMm = strip.BlankMm,
            MiddleMm = strip.MiddleMm,
            StartMitreDeg = strip.StartMitreDeg,
            EndMitreDeg = strip.EndMitreDeg,
            HeightMm = design.Request.Order.Rule.HeightMm,
            ThicknessMm = design.Request.Order.Rule.ThicknessMm,
            Bevel = EnumWord.Of(design.Request.Order.Rule.Bevel),
            Count = strip.Count,
        });
    });

    /// <summary>Name of a piece: letter of its part and its number.</summary>
    public static string Name(DieDesign design, RuleStrip strip) => InvariantText.Invariant($"{design.Letter(strip.Part)}{strip.Number}");

    private static IEnumerable<Line> Parts(RuleStrip strip, string name) =>
    [
        .. strip.Bends.Select(b => new Line
        {
            Strip = name,
            What = Bend,
            FromMm = b.FromMm,
            ToMm = b.ToMm,
            AngleDeg = Math.Abs(b.TurnDeg),
            Toward = b.TurnDeg > 0 ? "panel" : "waste",
            InsideRadiusMm = b.InsideRadiusMm,
            SetAngleDeg = b.Setting is { } set ? Math.Abs(set.TurnDeg) : null,
            SetRadiusMm = b.Setting?.InsideRadiusMm,
        }),
        .. strip.Notches.Select(n => new Line { Strip = name, What = Notch, FromMm = n.FromMm, ToMm = n.ToMm }),
    ];

    /// <summary>One line.</summary>
    internal sealed record Line
    {
        public required string Strip { get; init; }

        public required string What { get; init; }

        public required double FromMm { get; init; }

        public required double ToMm { get; init; }

        public double? MiddleMm { get; init; }

        public double? AngleDeg { get; init; }

        public string? Toward { get; init; }

        public double? InsideRadiusMm { get; init; }

        public double? SetAngleDeg { get; init; }

        public double? SetRadiusMm { get; init; }

        public double? StartMitreDeg { get; init; }

        public double? EndMitreDeg { get; init; }

        public double? HeightMm { get; init; }

        public double? ThicknessMm { get; init; }

        public string? Bevel { get; init; }

        public double? Count { get; init; }
    }
}
