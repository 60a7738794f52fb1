using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Rolls;
using FeltNest.Rolls.Check;
using FeltNest.Rolls.Plan;
using Xunit;

namespace FeltNest.Tests.Rolls;

/// <summary>Strikes of random rolls, turned and mirrored against themselves, and with more or less in their way. The plan is proved the
/// best on its grid, so these are theorems.</summary>
public sealed class StrikeStressTests
{
    [Fact]
    public void A_roll_mirrored_across_has_as_many_good_panels()
    {
        for (int seed = 0; seed < Runs.Count(24); seed++)
        {
            RollRequest request = Question(seed);
            RollRequest mirrored =
                request with { Layout = AcrossMirrored(request.Layout, request.Roll), Roll = AcrossMirrored(request.Roll) };

            (RollPlan plain, RollPlan other) = (StrikePlanner.Run(request), StrikePlanner.Run(mirrored));
            Assert.Equal((seed, plain.GoodPanels, plain.BackToBackGoodPanels), (seed, other.GoodPanels, other.BackToBackGoodPanels));
            Assert.Empty(RollPlanCheck.Verify(mirrored.Layout, mirrored.Roll, RollCases.Stated(other)).Violations);
        }
    }

    // The last place of the grid ends where the roll does, so that the turned grid is the same one; a strike may hang over the end of a
    // roll and not over its start, so both ends are faults as long as a strike. Where two cuts of the repeat are equally short, one of them
    // is taken, and from the other end that is another die: only strikes that are the same when turned are compared.
    [Fact]
    public void A_roll_taken_from_its_other_end_has_as_many_good_panels()
    {
        int compared = 0;
        for (int seed = 0; seed < Runs.Count(24); seed++)
        {
            RollRequest request = Question(seed, length: 140);
            StrikePattern pattern = StrikePattern.Of(request.Layout, request.RepeatsPerStrike);
            StrikeGrid grid = StrikeGrid.Of(request, pattern.FeedMm);
            double length = (Math.Floor((request.Roll.LengthMm - pattern.LengthMm) / grid.StepMm) * grid.StepMm) + pattern.LengthMm;
            RollFault End(double x) => RollFault.Box(x, 0, pattern.LengthMm, request.Roll.LeastWidthMm);
            request = request with
            {
                Roll = request.Roll with { LengthMm = length, Faults = [.. request.Roll.Faults, End(0), End(length - pattern.LengthMm)] },
            };
            RollRequest turned = request with { Layout = HalfTurned(request.Layout, request.Roll), Roll = HalfTurned(request.Roll) };

            if (!IsTurned(pattern, StrikePattern.Of(turned.Layout, request.RepeatsPerStrike), request.Roll))
            {
                continue;
            }

            (RollPlan plain, RollPlan other) = (StrikePlanner.Run(request), StrikePlanner.Run(turned));
            compared++;
            Assert.Equal((seed, plain.GoodPanels), (seed, other.GoodPanels));
            Assert.Empty(RollPlanCheck.Verify(turned.Layout, turned.Roll, RollCases.Stated(other)).Violations);
        }

        Assert.True(compared > 8, $"{compared} compared");
    }

    [Fact]
    public void A_fault_more_a_joint_more_or_a_shorter_roll_never_gains_a_panel_and_more_play_never_loses_one()
    {
        int fewer = 0;
        int more = 0;
        for (int seed = 0; seed < Runs.Count(24); seed++)
        {
            Random random = new(seed);
            RollRequest request = Question(seed, 4) with { GuidePlayMm = 2 };
            FeltRoll roll = request.Roll;
            int plain = StrikePlanner.Run(request).GoodPanels;
            int[] worse =
            [
                Good(
                    request with
                    {
                        Roll = roll with
                        {
                            Faults =
                            [
                                .. roll.Faults,
                                RollFault.Disc(roll.LengthMm * random.NextDouble(), roll.LeastWidthMm * random.NextDouble(), 4),
                            ],
                        },
                    }),
                Good(
                    request with
                    {
                        Roll = roll with
                        {
                            Splices =
                            [
                                .. roll.Splices.Append(new() { XMm = roll.LengthMm * random.NextDouble(), ClearMm = seed % 3 })
                                    .OrderBy(s => s.XMm),
                            ],
                        },
                    }),
                Good(
                    request with
                    {
                        Roll = roll with
                        {
                            LengthMm = roll.LengthMm * 0.9,
                            Splices = [.. roll.Splices.Where(s => s.XMm < roll.LengthMm * 0.9)],
                        },
                    }),
                Good(request with { Roll = roll with { Widths = [.. roll.Widths.Select(w => w with { WidthMm = w.WidthMm - 0.5 })] } }),
            ];

            // Steps across of 1 mm up to a play of 10: the places of a play of 2 are among those of 5.
            int wider = StrikePlanner.Run(request with { GuidePlayMm = 5 }).GoodPanels;
            Assert.All(worse, good => Assert.InRange(good, 0, plain));
            Assert.True(wider >= plain, $"seed {seed}: {wider} with more play, {plain} before");
            fewer += worse.Count(good => good < plain);
            more += wider > plain ? 1 : 0;
        }

        Assert.True(fewer > 20 && more > 2, $"questions that ask something: {fewer} with fewer, {more} with more");
    }

    private static int Good(RollRequest request)
    {
        try
        {
            return StrikePlanner.Run(request).GoodPanels;
        }
        catch (NoAnswerException)
        {
            return 0;
        }
    }

    private static bool IsTurned(StrikePattern pattern, StrikePattern other, FeltRoll roll) => pattern.Panels.All(p =>
        other.Panels.Any(o => Math.Abs(other.LengthMm - o.MaxX - p.MinX) < 1e-6 && Math.Abs(roll.LeastWidthMm - o.MaxY - p.MinY) < 1e-6));

    private static RollRequest Question(int seed, double? wider = null, double length = 90)
    {
        RollLayout layout = RollCases.Interlocked(seed);
        FeltRoll roll = RollCases.Random(seed, layout, length) with
        {
            Widths = [new() { XMm = 0, WidthMm = layout.RollWidthMm + (wider ?? seed % 3) }],
        };
        return new RollRequest
        {
            Layout = layout,
            Roll = roll,
            RepeatsPerStrike = 1 + (seed % 2),
            GuidePlayMm = seed % 4,
            FromMm = 0,
        };
    }

    private static FeltRoll AcrossMirrored(FeltRoll roll) =>
        roll with { Faults = [.. roll.Faults.Select(f => f with { YMm = roll.LeastWidthMm - f.YMm - f.WidthMm })] };

    private static FeltRoll HalfTurned(FeltRoll roll) => AcrossMirrored(roll) with
    {
        Splices =
        [
            .. roll.Splices.Select(s => s with { XMm = roll.LengthMm - s.XMm }).Where(s => s.XMm > 0 && s.XMm < roll.LengthMm)
                .OrderBy(s => s.XMm),
        ],
        Faults = [.. AcrossMirrored(roll).Faults.Select(f => f with { XMm = roll.LengthMm - f.XMm - f.LengthMm })],
    };

    // Both about the middle of the roll, which may be wider than its layout.
    private static RollLayout AcrossMirrored(RollLayout layout, FeltRoll roll) =>
        Placed(layout, roll, p => new Point2(p.X, -p.Y), at => at with { AngleDeg = -at.AngleDeg, YMm = roll.LeastWidthMm - at.YMm });

    private static RollLayout HalfTurned(RollLayout layout, FeltRoll roll) =>
        Placed(layout, roll, p => p, at => at with { AngleDeg = at.AngleDeg + 180, XMm = -at.XMm, YMm = roll.LeastWidthMm - at.YMm });

    private static RollLayout Placed(RollLayout layout, FeltRoll roll, Func<Point2, Point2> part, Func<PlacedPanel, PlacedPanel> panel) =>
        layout with
        {
            Parts = [.. layout.Parts.Select(p => p with { Outline = Outline.From(p.Outline.Points.Select(part)) })],
            RollWidthMm = roll.LeastWidthMm,
            Trims = new EdgeTrims { LowerMm = layout.Trims.UpperMm, UpperMm = layout.Trims.LowerMm },
            Bands =
        [
            .. layout.Bands.Select(band =>
                new LayoutBand
                {
                    YFromMm = roll.LeastWidthMm - band.YToMm,
                    YToMm = roll.LeastWidthMm - band.YFromMm,
                    Repeat = new LayoutRepeat(band.Repeat.LengthMm, [.. band.Repeat.Panels.Select(panel)]),
                }),
        ],
        };
}
