using FeltNest.Cost.Tickets;
using FeltNest.Drawing.Charts;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets;

/// <summary>Causes of the difference from standard, the greatest first, and how far they add up.</summary>
internal static class ParetoSheet
{
    private const double Width = 190;
    private const double Margin = 6;
    private const double Step = 8;
    private const double Room = 16;

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(PeriodUsage usage)
    {
        TicketPart[] parts = [.. usage.Whole.Parts.Where(p => p.Cause != TicketCause.Price).OrderByDescending(p => Math.Abs(p.M2))];
        decimal all = parts.Sum(p => Math.Abs(p.M2));
        decimal sum = 0;
        List<(string, IReadOnlyList<double>, string)> bars = [];
        foreach (TicketPart part in parts)
        {
            sum += Math.Abs(part.M2);
            bars.Add((
                CauseWords.Of(part.Cause), [(double)part.M2],
                Invariant($"{part.M2:+0.00;-0.00;0.00}  ({(all == 0 ? 0 : 100 * sum / all):0} %)")));
        }

        double height = (parts.Length * Step) + Room + (2 * Margin);
        DifferenceBars chart = new(
            "Felt above standard by cause, m\u00B2 (in brackets: share of all causes so far)",
            [("more or less than standard", Colour.Of(0x41606F))],
            bars);
        return new Sheet
        {
            Title = $"Causes of felt above standard: {usage.Book}",
            Description = "Bars of the felt above or below standard by cause, the greatest first.",
            WidthMm = Width,
            HeightMm = height,
            Symbols = [],
            Marks =
            [
                new GroupMark("causes", [.. chart.Draw(new Box
                {
                    MinX = Margin, MinY = Margin, MaxX = Width - Margin, MaxY = height - Margin,
                })]),
            ],
        };
    }
}
