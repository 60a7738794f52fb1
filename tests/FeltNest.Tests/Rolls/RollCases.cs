using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Rolls;
using FeltNest.Rolls.Check;
using FeltNest.Rolls.Plan;
using FeltNest.Tests.Layout;

namespace FeltNest.Tests.Rolls;

/// <summary>Rolls and layouts to plan strikes on.</summary>
internal static class RollCases
{
    /// <summary>One row of 10 x 10 squares, 12 apart along the roll, between trims of 5 on a roll 20 wide, gap 2.</summary>
    internal static RollLayout Squares { get; } = new()
    {
        Parts = [Shapes.Part(Shapes.Of(5, -1, -1, 1, -1, 1, 1, -1, 1))],
        RollWidthMm = 20,
        Trims = EdgeTrims.Both(5),
        GapMm = 2,
        Rules = new LayoutRules(null, 0, RowRule.Same, false),
        Bands = [new LayoutBand
        {
            YFromMm = 5,
            YToMm = 15,
            Repeat = new LayoutRepeat(12, [new PlacedPanel { Part = 0, XMm = 0, YMm = 10, AngleDeg = 0 }]),
        }],
        Search = Shapes.ByHand(leastGapMm: 2),
    };

    /// <summary>Two rows of the same squares on a roll 32 wide.</summary>
    internal static RollLayout TwoRows { get; } = new()
    {
        Parts = [Shapes.Part(Shapes.Of(5, -1, -1, 1, -1, 1, 1, -1, 1))],
        RollWidthMm = 32,
        Trims = EdgeTrims.Both(5),
        GapMm = 2,
        Rules = new LayoutRules(null, 0, RowRule.Same, false),
        Bands = [new LayoutBand
        {
            YFromMm = 5,
            YToMm = 27,
            Repeat = new LayoutRepeat(
                12,
                [
                    new PlacedPanel { Part = 0, XMm = 0, YMm = 10, AngleDeg = 0 },
                    new PlacedPanel { Part = 0, XMm = 0, YMm = 22, AngleDeg = 0 },
                ]),
        }],
        Search = Shapes.ByHand(leastGapMm: 2),
    };

    /// <summary>Squares of 10 every 12 mm in one band, and above it plates of 16 x 10, another part, on a repeat of their own: roll 32
    /// wide, gap 2.</summary>
    internal static RollLayout TwoParts(double secondRepeatMm) => TwoRows with
    {
        Parts = [TwoRows.Parts[0], Shapes.Part(Outline.From([new(0, 0), new(16, 0), new(16, 10), new(0, 10)])) with { Name = "plate" }],
        Rules = TwoRows.Rules with { Bands = 2 },
        Bands =
        [
            new LayoutBand
            {
                YFromMm = 5,
                YToMm = 15,
                Repeat = new LayoutRepeat(12, [new PlacedPanel { Part = 0, XMm = 0, YMm = 10, AngleDeg = 0 }]),
            },
            new LayoutBand
            {
                YFromMm = 17,
                YToMm = 27,
                Repeat = new LayoutRepeat(secondRepeatMm, [new PlacedPanel { Part = 1, XMm = -5, YMm = 17, AngleDeg = 0 }]),
            },
        ],
    };

    /// <summary>The same two rows with 2 mm more between them, on a roll 34 wide.</summary>
    internal static RollLayout LooseRows { get; } = TwoRows with
    {
        RollWidthMm = 34,
        Bands = [new LayoutBand
        {
            YFromMm = 5,
            YToMm = 29,
            Repeat = new LayoutRepeat(
                12,
                [
                    new PlacedPanel { Part = 0, XMm = 0, YMm = 10, AngleDeg = 0 },
                    new PlacedPanel { Part = 0, XMm = 0, YMm = 24, AngleDeg = 0 },
                ]),
        }],
    };

    /// <summary>Two rows of combs, 44 long with a tooth every 6, the upper turned and its teeth between the lower one's: 48 apart along the
    /// roll, 21 ahead of each other, gap 0.9.</summary>
    internal static RollLayout Combs { get; } = new()
    {
        Parts = [Shapes.Part(Outline.From([new(0, 0), new(44, 0), .. Enumerable.Range(0, 8).Reverse().SelectMany(Tooth)]))],
        RollWidthMm = 19,
        Trims = EdgeTrims.Both(5),
        GapMm = 0.9,
        Rules = new LayoutRules(null, 0, RowRule.Same, false),
        Bands = [new LayoutBand
        {
            YFromMm = 5,
            YToMm = 14,
            Repeat = new LayoutRepeat(
                48,
                [
                    new PlacedPanel { Part = 0, XMm = 0, YMm = 5, AngleDeg = 0 },
                    new PlacedPanel { Part = 0, XMm = 65, YMm = 14, AngleDeg = 180 },
                ]),
        }],
        Search = Shapes.ByHand(leastGapMm: 1),
    };

    /// <summary>A roll of one width.</summary>
    internal static FeltRoll Roll(double length, double width, params RollFault[] faults) =>
        new()
        {
            Name = "R",
            Felt = null,
            Lot = null,
            LengthMm = length,
            Widths = [new WidthReading { XMm = 0, WidthMm = width }],
            Splices = [],
            SkewDeg = 0,
            Nap = null,
            MassPerAreaGsm = null,
            Faults = faults,
        };

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
                new() { XMm = 0, WidthMm = width + 1 - random.NextDouble() },
                new() { XMm = length * 0.4, WidthMm = width - (2 * random.NextDouble()) }, new() { XMm = length, WidthMm = width + 2 },
            ],
            Splices = random.Next(2) == 0 ? [] : [new() { XMm = length * random.NextDouble(), ClearMm = seed % 3 }],
        };
    }

    /// <summary>What a plan states, as the check takes it.</summary>
    internal static StatedPlan Stated(RollPlan plan) => new()
    {
        Repeats = plan.Pattern.Repeats,
        FeedMm = plan.Pattern.FeedMm,
        Panels = [.. plan.Pattern.Panels.Select(p => p.Placed)],
        GuidePlayMm = plan.Request.GuidePlayMm,
        FromMm = plan.Request.FromMm,
        PastEnd = plan.Request.PastEnd,
        Balls = plan.Balls,
        Parts =
        [
            .. plan.Yields.Select(y => new StatedPart { Part = y.Part, GoodPanels = y.GoodPanels, Balls = y.Balls }),
        ],
        Strikes = [.. plan.Strikes.Select(s => new StatedStrike
        {
            XMm = s.XMm,
            ShiftYMm = s.ShiftYMm,
            GoodPanels = s.GoodPanels,
            LostPanels = s.Lost.Count,
        })],
        GoodPanels = plan.GoodPanels,
        BackToBackGoodPanels = plan.BackToBackGoodPanels,
        LostPanels = plan.Strikes.Sum(s => s.Lost.Count),
    };

    private static Point2[] Tooth(int i)
    {
        double x = 6 * i;
        Point2[] tooth = [new(x + 2, 2), new(x + 2, 6), new(x, 6), new(x, 2)];
        return i == 0 ? tooth[..3] : i == 7 ? tooth[1..] : tooth;
    }

    private static RollLayout Lay(Outline part, double width) => Shapes.Lay(Shapes.Request(part, width, gap: 0.5, edge: 1));
}
