using FeltNest.Die.Effort;
using FeltNest.Die.Gang;
using FeltNest.Die.Make;
using FeltNest.Die.Order;
using FeltNest.Die.SharedRule;
using FeltNest.Layout;
using Xunit;

namespace FeltNest.Tests.Die.Make;

public sealed class CuttingForceTests
{
    // A die FAQ of a supplier: 500 inches of rule at 400 pounds an inch, and rubber of 500 square inches at 50: 200,000 + 25,000 pounds,
    // 112.5 short tons. An eighth more for the rubber.
    [Fact]
    public void Five_hundred_inches_of_rule_with_rubber_take_1000_kN()
    {
        const double pound = 4.4482216152605;
        const double inch = 25.4;
        CuttingForce force = CuttingForce.Of(500 * inch, 0, 1, Figures(400 * pound / inch, 12.5, 0));

        Assert.Equal(1000.8, force.Kn, 0.05);
        Assert.Equal(102.1, force.TonnesForce, 0.05);
    }

    // A page on punching forces: shear strength 55 N/mm2 times 0.4 mm times 1000 mm is 22.0 kN, 2.24 t, and 2.8 t with a quarter more.
    [Fact]
    public void A_metre_of_a_sheet_of_22_newtons_a_millimetre_takes_22_kN()
    {
        Assert.Equal(22.0, CuttingForce.Of(1000, 0, 1, Figures(55 * 0.4, 0, 0)).Kn, 1e-9);
        Assert.Equal(2.24, CuttingForce.Of(1000, 0, 1, Figures(55 * 0.4, 0, 0)).TonnesForce, 0.005);
        Assert.Equal(2.8, CuttingForce.Of(1000, 0, 1, Figures(55 * 0.4, 0, 25)).TonnesForce, 0.05);
    }

    // Own arithmetic: 24 cavities of 330 mm at 20 N/mm are 158.4 kN; all rules close and 15 % for ejection make 1.4375 of it, and a quarter
    // more 284.6 kN or 29.0 t.
    [Fact]
    public void Close_rules_ejection_and_reserve_multiply()
    {
        CuttingForce bare = CuttingForce.Of(24 * 330, 24 * 330, 1, Figures(20, 15, 0));
        CuttingForce all = CuttingForce.Of(24 * 330, 24 * 330, 1, Figures(20, 15, 25));

        Assert.Equal(158.4, bare.BareKn, 1e-9);
        Assert.Equal(227.7, bare.Kn, 1e-9);
        Assert.Equal(284.6, all.Kn, 0.05);
        Assert.Equal(29.0, all.TonnesForce, 0.05);
        Assert.Equal(2 * all.Kn, CuttingForce.Of(24 * 330, 24 * 330, 2, Figures(20, 15, 25)).Kn, 1e-9);
    }

    // The same FAQ: parallel rules a quarter of an inch apart or less add half of the shorter length. Two plates 4 mm apart face each other
    // over 40 mm, and the ends of their other sides are close over 6.35 - 4 = 2.35 mm each; the edge is looked at in steps of 2 mm.
    [Fact]
    public void Two_facing_sides_add_half_of_one()
    {
        RollLayout lay = DieCases.Plates;
        DieCavity[] pair =
        [
            new(1, new PlacedPanel { Part = 0, XMm = 0, YMm = 0, AngleDeg = 0 }),
            new(2, new PlacedPanel { Part = 0, XMm = 0, YMm = 24, AngleDeg = 0 }),
        ];
        double close = CloseRules.LengthMm(lay.Parts, pair, CommonCuts.None, 6.35, new DieWork(default));

        Assert.InRange(close, 80 + (4 * 2.35) - 4, 80 + (4 * 2.35) + 4);
        Assert.Equal(20, CuttingForce.Of(240, 80, 1, Figures(20, 0, 0)).CloseAddedMm, 1e-9);
        Assert.Equal(
            0,
            CloseRules.LengthMm(
                lay.Parts, [pair[0], new(2, new PlacedPanel { Part = 0, XMm = 0, YMm = 27, AngleDeg = 0 })], CommonCuts.None, 6.35,
                new DieWork(default)),
            1e-9);
    }

    private static ForceFigures Figures(double q, double ejection, double reserve) => new()
    {
        NPerMmPerPly = q,
        Basis = ForceBasis.Measured,
        EjectionPercent = ejection,
        ReservePercent = reserve,
        CloseMm = 6.35,
    };
}
