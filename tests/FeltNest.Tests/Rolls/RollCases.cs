using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Rolls;
using FeltNest.Rolls.Check;
using FeltNest.Rolls.Plan;
using FeltNest.Tests.Layout;

namespace FeltNest.Tests.Rolls;

/// <summary>Rolls and layouts to plan strikes on.</summary>
internal static class RollCases
{
    /// <summary>One row of 10 x 10 squares, 12 apart along the roll, between trims of 5 on a roll 20 wide, gap 2.</summary>
    internal static RollLayout Squares { get; } = new(
        [Shapes.Part(Shapes.Of(5, -1, -1, 1, -1, 1, 1, -1, 1))], 20, 5, 2, new LayoutRules(null, 0, RowRule.Same, false),
        [new LayoutBand(5, 15, new LayoutRepeat(12, [new PlacedPanel(0, 0, 10, 0)]))],
        new SearchRecord(1, 1, false, "by hand", null, 0, 2, null));

    /// <summary>Two rows of the same squares on a roll 32 wide.</summary>
    internal static RollLayout TwoRows { get; } = new(
        [Shapes.Part(Shapes.Of(5, -1, -1, 1, -1, 1, 1, -1, 1))], 32, 5, 2, new LayoutRules(null, 0, RowRule.Same, false),
        [new LayoutBand(5, 27, new LayoutRepeat(12, [new PlacedPanel(0, 0, 10, 0), new PlacedPanel(0, 0, 22, 0)]))],
        new SearchRecord(1, 1, false, "by hand", null, 0, 2, null));

    /// <summary>Two rows of combs, 44 long with a tooth every 6, the upper turned and its teeth between the lower one's: 48 apart along the
    /// roll, 21 ahead of each other, gap 0.9.</summary>
    internal static RollLayout Combs { get; } = new(
        [Shapes.Part(Outline.From([new(0, 0), new(44, 0), .. Enumerable.Range(0, 8).Reverse().SelectMany(Tooth)]))], 19, 5, 0.9,
        new LayoutRules(null, 0, RowRule.Same, false),
        [new LayoutBand(5, 14, new LayoutRepeat(48, [new PlacedPanel(0, 0, 5, 0), new PlacedPanel(0, 65, 14, 180)]))],
        new SearchRecord(1, 1, false, "by hand", null, 0, 1, null));

    /// <summary>A roll of one width.</summary>
    internal static FeltRoll Roll(double length, double width, params RollFault[] faults) =>
        new("R", null, null, length, [new WidthReading(0, width)], [], 0, null, null, faults);

    private static readonly Lazy<RollLayout>[] Found =
    [
        new(() => Lay(Shapes.DogBone(2, 0.5, 4, 1.6), 17)),
        new(() => Lay(Shapes.Of(1, 0, 0, 6, 0, 8, 3, 2, 3), 16)),
        new(() => Lay(Shapes.Of(1, 0, 0, 7, 1, 1, 5), 18)),
        new(() => Lay(Shapes.Of(1, -4, -2, 0, -0.7, 4, -2, 4, 2, 0, 0.7, -4, 2), 19)),
    ];

    /// <summary>A small interlocked layout found by the search; four seeds in a row bring the four parts.</summary>
    internal static RollLayout Interlocked(int seed) => Found[seed % Found.Length].Value;

    /// <summary>A small roll with faults, joints and widths that change with the seed.</summary>
    internal static FeltRoll Random(int seed, RollLayout layout, double length)
    {
        Random random = new(seed);
        double width = layout.RollWidthMm;
        RollFault Fault() => random.Next(2) == 0
            ? RollFault.Disc(length * random.NextDouble(), width * random.NextDouble(), 1.5 * random.NextDouble())
            : RollFault.Box(
                length * 0.9 * random.NextDouble(), width * 0.8 * random.NextDouble(), 3 * random.NextDouble(), 3 * random.NextDouble());
        return Roll(length, width, [.. Enumerable.Range(0, random.Next(5)).Select(_ => Fault())]) with
        {
            Widths =
            [
                new(0, width + 1 - random.NextDouble()), new(length * 0.4, width - (2 * random.NextDouble())), new(length, width + 2),
            ],
            JointsMm = random.Next(2) == 0 ? [] : [length * random.NextDouble()],
        };
    }

    /// <summary>What a plan states, as the check takes it.</summary>
    internal static StatedPlan Stated(RollPlan plan) => new(
        plan.Pattern.Repeats, plan.Pattern.FeedMm, [.. plan.Pattern.Panels.Select(p => p.Placed)], plan.Request.GuidePlayMm,
        plan.Request.FromMm,
        [.. plan.Strikes.Select(s => new StatedStrike(s.XMm, s.ShiftYMm, s.GoodPanels, s.Lost.Count))], plan.GoodPanels,
        plan.BackToBackGoodPanels, plan.Strikes.Sum(s => s.Lost.Count));

    private static Point2[] Tooth(int i)
    {
        double x = 6 * i;
        Point2[] tooth = [new(x + 2, 2), new(x + 2, 6), new(x, 6), new(x, 2)];
        return i == 0 ? tooth[..3] : i == 7 ? tooth[1..] : tooth;
    }

    private static RollLayout Lay(Outline part, double width) => Shapes.Lay(Shapes.Request(part, width, gap: 0.5, edge: 1));
}
