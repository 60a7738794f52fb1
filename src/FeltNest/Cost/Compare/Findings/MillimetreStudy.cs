using FeltNest.Cost.Priced;
using FeltNest.Cost.Sheet;
using FeltNest.Layout;

namespace FeltNest.Cost.Compare.Findings;

/// <summary>Lays the best row again with a millimetre more or less; what does not fit any more is left out.</summary>
internal sealed class MillimetreStudy(
    CompareRequest question, WidthLays lays, RowPricing pricing, LayoutFrontSource search, CancellationToken stop)
{
    /// <summary>The cheapest way with a gap a millimetre smaller, or null where there is none.</summary>
    public LayChoice? SmallerGap { get; private set; }

    /// <summary>The worth of a millimetre of gap, width and length.</summary>
    /// <param name="best">The best row.</param>
    /// <param name="widestMm">Width of the widest case, mm.</param>
    public IReadOnlyList<LengthValue> Values(CompareRow best, double widestMm)
    {
        CompareCase item = best.Case;
        double gap = question.Lay.GapMm;
        double length = LongerPart.LengthOf(question.Lay.Part);
        List<LengthValue> values = [];
        if (gap >= 1)
        {
            Gap(gap - 1);
        }

        Gap(gap + 1);
        Add(
            FormattableString.Invariant($"width {item.WidthMm + 1:0.###} instead of {item.WidthMm:0.###} mm"), question.Lay,
            item.WidthMm + 1);
        Add(
            FormattableString.Invariant($"panel {length - 1:0.0} instead of {length:0.0} mm long"),
            question.Lay with { Part = LongerPart.Of(question.Lay.Part, -1) }, item.WidthMm);
        return values;

        void Gap(double other) => Add(
            FormattableString.Invariant($"gap {other:0.###} instead of {gap:0.###} mm"), question.Lay with { GapMm = other }, item.WidthMm);

        void Add(string change, LayoutRequest lay, double width)
        {
            try
            {
                WidthLays other =
                    ReferenceEquals(lay, question.Lay) ? lays : new WidthLays(lay with { RollWidthMm = widestMm }, question.Scan, search);
                LayChoice way = pricing.Cheapest(item, other.On(width, item.Trims, stop));
                SmallerGap = lay.GapMm < gap ? way : SmallerGap;
                CostParts? more = way.Sheet is { } sheet && best.Sheet is { } now
                    ? CostParts.Of(sheet).Above(CostParts.Of(now)).Times(1000) : null;
                values.Add(new LengthValue(change, 1000 * (way.SquareMetres - best.Account.PerThousandBalls.SquareMetres), more));
            }
            catch (NoAnswerException) { /* A wider gap may leave no room for the part. */ }
        }
    }
}
