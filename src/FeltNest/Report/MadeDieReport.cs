using System.Globalization;
using FeltNest.Die.Proof;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>What a die as made prints.</summary>
internal static class MadeDieReport
{
    /// <summary>The judgement of a die.</summary>
    public static string Text(MadeDie made)
    {
        TextTable table = new();
        table.Heading($"{made.Name} as made: {ConformityWords.Of(made.Verdict)}")
            .Line(
                "widest zone of an edge", made.Worst.Edge.ZoneMm, "0.000", "mm",
                Invariant($"cavity {made.Worst.Number}; {made.Rule.ToleranceMm:0.###} is allowed"))
            .Line(
                "farthest off its place", made.Farthest.OffMm.Length, "0.000", "mm",
                Invariant($"cavity {made.Farthest.Number}; {made.PositionMm / 2:0.###} is allowed"))
            .Line("mean off the edges", made.MeanOffMm, "+0.000;-0.000", "mm", "set the next edge back by it")
            .Line(
                "laid", made.TurnDeg, "0.000", "degrees",
                made.Rule.InFrame ? "in the die's frame" : "all places turned and moved together to lie best")
            .Heading("Cavities")
            .Row("  no.  points   zone mm   mean mm   off x mm   off y mm   in place mm   edge / place");
        foreach (MadeCavity c in made.Cavities)
        {
            table.Row(
                Invariant($"{c.Number,5}{c.Edge.Points.Count,8}{c.Edge.ZoneMm,10:0.000}{Signed(c.Edge.SquaresMeanMm),10}")
                    + Invariant($"{Signed(c.OffMm.X),11}{Signed(c.OffMm.Y),11}{Signed(c.InPlaceMm),14}   ")
                    + $"{Words(c.Edge.Verdict)} / {Words(c.Position)}");
        }

        if (made.Bends.Count > 0)
        {
            table
                .Heading("Bends: set these next time")
                .Row("  part  bend        at mm   wanted deg    got deg   opened %    +/-   set deg");
            foreach ((int part, OpenedBend bend) in made.Bends)
            {
                string place = Invariant($"{bend.Place.X:0}, {bend.Place.Y:0}");
                table.Row(
                    Invariant($"{part + 1,6}{bend.Number,6}{place,13}{bend.WantedDeg,13:0.00}{bend.GotDeg,11:0.00}")
                        + Invariant($"{100 * bend.OpenedShare,11:0.00}{100 * bend.ErrorShare,7:0.00}{bend.SetDeg,10:0.00}"));
            }
        }

        return table.ToString();
    }

    /// <summary>Warnings of a die, one line each.</summary>
    public static IEnumerable<string> Warnings(MadeDie made)
    {
        if (made.Mirrored)
        {
            yield return "the points lie as the cavities do only when mirrored: the die was seen from its other side, and is judged so";
        }

        if (made.NotMeasured.Count > 0)
        {
            yield return $"not measured: cavities {string.Join(", ", made.NotMeasured.Take(20))}"
                + (made.NotMeasured.Count > 20 ? Invariant($" and {made.NotMeasured.Count - 20} more") : string.Empty);
        }

        if (made.Rule.UncertaintyMm is null)
        {
            yield return "the measurement uncertainty is unknown: the verdict stands on the values as measured and proves nothing by "
                + "ISO 14253-1";
        }

        foreach (MadeCavity c in made.Cavities.Where(c => c.Edge.Verdict == Conformity.Undecided))
        {
            yield return Invariant($"cavity {c.Number} is undecided: {c.Edge.WidestGapMm:0.0} mm of its edge have no point, and ")
                + Invariant($"{c.Edge.HiddenMm:0.000} mm may hide there");
        }
    }

    private static string Signed(double value) =>
        (Math.Round(value, 3) + 0.0).ToString("+0.000;-0.000;0.000", CultureInfo.InvariantCulture);

    private static string Words(Conformity verdict) => verdict switch
    {
        Conformity.Conforms => "in",
        Conformity.DoesNotConform => "OUT",
        _ => "open",
    };
}
