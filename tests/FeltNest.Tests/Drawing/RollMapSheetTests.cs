using FeltNest.Drawing;
using FeltNest.Drawing.Sheets.Rolls;
using FeltNest.Rolls;
using FeltNest.Rolls.Plan;
using FeltNest.Tests.Rolls;
using Xunit;

namespace FeltNest.Tests.Drawing;

/// <summary>The map of a roll on pages that a printer takes.</summary>
public sealed class RollMapSheetTests
{
    [Theory]
    [InlineData(118, 1)]
    [InlineData(40_000, 1)]
    public void A_map_is_whole_pages_of_a_three(double length, int pages)
    {
        Sheet sheet = RollMapSheet.Draw(Plan(length));

        Assert.Equal((420, 297.0 * pages), (sheet.WidthMm, sheet.HeightMm));
        Assert.All(SheetWords.Of(sheet), w => Assert.InRange(w.At.X, 0, 420));
        Assert.All(SheetWords.Of(sheet), w => Assert.InRange(w.At.Y, 5, (297.0 * pages) - 10));
    }

    // ISO 216: A4 is 210 x 297 mm, A3 lying 420 x 297 mm.
    [Theory]
    [InlineData("A4", 210)]
    [InlineData("A3", 420)]
    public void In_print_a_map_is_pages_of_the_paper_asked_for(string paper, double width)
    {
        IReadOnlyList<Sheet> pages = RollMapSheet.Pages(Plan(40_000), paper);

        Assert.NotEmpty(pages);
        Assert.All(pages, page => Assert.Equal((width, 297.0), (page.WidthMm, page.HeightMm)));
        Assert.All(pages.SelectMany(SheetWords.Of), w => Assert.InRange(w.At.X, 0, width));
        Assert.All(pages.SelectMany(SheetWords.Of), w => Assert.InRange(w.At.Y, 5, 287));
    }

    // On A4 at 1:50 a line is 9 m and 30 + 14 mm high: four lines, 36 m, have room between title and key. Of 100 m that is three pages.
    [Fact]
    public void A_long_roll_takes_pages_that_say_their_metres_and_has_match_marks_at_its_folds()
    {
        RollPlan plan = StrikePlanner.Run(new RollRequest
        {
            Layout = RollCases.Squares,
            Roll = RollCases.Roll(100_000, 1500),
            RepeatsPerStrike = 100,
            GuidePlayMm = 0,
            FromMm = 0,
        });
        IReadOnlyList<Sheet> pages = RollMapSheet.Pages(plan, "A4");

        Assert.Equal(
            ["page 1 of 3: 0 to 36 m", "page 2 of 3: 36 to 72 m", "page 3 of 3: 72 to 100 m"],
            pages.Select(page => SheetWords.Of(page).First(w => w.Text.StartsWith("Roll ", StringComparison.Ordinal)).Text)
                .Select(words => $"{words.Split(", ")[1]}".Split(": ") is var said ? $"{said[0]}: {said[1]}" : string.Empty));
        PathMark[] folds =
        [
            .. pages.SelectMany(page => page.Marks).OfType<GroupMark>().SelectMany(group => group.Marks).OfType<PathMark>()
                .Where(mark => mark is { Pen: not null, Fill: not null } && mark.Chains is [{ Closed: true, Vertices.Count: 3 }]),
        ];
        Assert.Equal(2 * 11, folds.Length);
    }

    // Relative luminance after WCAG 2.2: a good panel is light and a lost one nearly black, so a grey print tells them apart.
    [Fact]
    public void A_lost_panel_is_told_from_a_good_one_in_grey()
    {
        Sheet sheet = RollMapSheet.Draw(Plan(118));
        double good = Luminance(sheet, "good-0");
        double lost = Luminance(sheet, "lost-0");

        Assert.InRange((good + 0.05) / (lost + 0.05), 7, 21);
    }

    private static double Luminance(Sheet sheet, string symbol)
    {
        Colour fill = Assert.IsType<PathMark>(Assert.Single(sheet.Symbols, s => s.Id == symbol).Marks[0]).Fill!.Value;
        return (0.2126 * Linear(fill.Red)) + (0.7152 * Linear(fill.Green)) + (0.0722 * Linear(fill.Blue));
    }

    private static double Linear(double part) =>
        part / 255 <= 0.04045 ? part / 255 / 12.92 : Math.Pow(((part / 255) + 0.055) / 1.055, 2.4);

    private static RollPlan Plan(double length) => StrikePlanner.Run(new RollRequest
    {
        Layout = RollCases.Squares,
        Roll = RollCases.Roll(length, 20, RollFault.Disc(50, 10, 3)),
        RepeatsPerStrike = 1,
        GuidePlayMm = 0,
        FromMm = 0,
    });
}
