using FeltNest.Ball.Tolerance;

namespace FeltNest.Ball.Ranges;

/// <summary>What every number of a ball specification may be.</summary>
public static class BallRanges
{
    /// <summary>Core diameter.</summary>
    public static readonly FieldRange CoreDiameter = new(
        "core.outerDiameterMm", 20, 200, "mm", "below 20 the felt is thicker than it can bend, above 200 it is no ball of this kind");

    /// <summary>Core mass.</summary>
    public static readonly FieldRange CoreMass = new("core.massG", 1, 2000, "g", "no rubber core of 20 to 200 mm is lighter or heavier");

    /// <summary>Cement thickness.</summary>
    public static readonly FieldRange CementThickness = new(
        "cement.thicknessMm", 0, 2, "mm", "thicker is a layer of its own, not an adhesive film");

    /// <summary>Cement mass per area.</summary>
    public static readonly FieldRange CementMass = new("cement.massPerAreaGsm", 0, 2000, "g/m2", "more than a 2 mm film can weigh");

    /// <summary>Felt thickness as cut.</summary>
    public static readonly FieldRange FeltThickness = new(
        "felt.thicknessMm", 0.3, 12, "mm", "thinner is no felt, thicker does not bend round a ball");

    /// <summary>Felt thickness on the finished ball.</summary>
    public static readonly FieldRange FinishedThickness = new(
        "felt.finishedThicknessMm", 0.3, 15, "mm", "thinner is no felt, thicker is more than raising the nap can give");

    /// <summary>Felt mass per area.</summary>
    public static readonly FieldRange FeltMass = new("felt.massPerAreaGsm", 50, 3000, "g/m2", "lighter is a veil, heavier is a board");

    /// <summary>Modulus along the warp.</summary>
    public static readonly FieldRange WarpModulus = new(
        "felt.warpModulusNPerMm", 0.01, 1000, "N/mm", "softer carries no load, stiffer is no felt");

    /// <summary>Modulus along the weft.</summary>
    public static readonly FieldRange WeftModulus = new(
        "felt.weftModulusNPerMm", 0.01, 1000, "N/mm", "softer carries no load, stiffer is no felt");

    /// <summary>Shear modulus.</summary>
    public static readonly FieldRange ShearModulus = new(
        "felt.shearModulusNPerMm", 0.001, 1000, "N/mm", "softer carries no load, stiffer is no felt");

    /// <summary>Poisson's ratio.</summary>
    public static readonly FieldRange Poisson = new(
        "felt.poisson", 0, 0.9, string.Empty, "at 1 a flat sheet could not change its area at all");

    /// <summary>Neutral layer.</summary>
    public static readonly FieldRange NeutralLayer = new(
        "felt.neutralLayer", 0, 1, string.Empty, "0 is the felt's core side, 1 its outside");

    /// <summary>Stretch limit.</summary>
    public static readonly FieldRange MaxStretch = new("felt.maxStretchPercent", 0, 100, "%", "no felt takes twice its length");

    /// <summary>Edge compression limit.</summary>
    public static readonly FieldRange MaxEdgeCompression = new(
        "felt.maxEdgeCompressionPercent", 0, 100, "%", "100 would leave no edge at all");

    /// <summary>Shrinkage along the warp.</summary>
    public static readonly FieldRange ShrinkWarp = new(
        "felt.cureShrinkWarpPercent", 0, 30, "%", "felt that shrinks more is not ready to be cut");

    /// <summary>Shrinkage along the weft.</summary>
    public static readonly FieldRange ShrinkWeft = new(
        "felt.cureShrinkWeftPercent", 0, 30, "%", "felt that shrinks more is not ready to be cut");

    /// <summary>Stretch along the warp when applied.</summary>
    public static readonly FieldRange ApplicationStretchWarp = new(
        "felt.applicationStretchWarpPercent", 0, 20, "%",
        "felt cannot be pushed on, and felt pulled farther all over springs back off the core");

    /// <summary>Stretch along the weft when applied.</summary>
    public static readonly FieldRange ApplicationStretchWeft = new(
        "felt.applicationStretchWeftPercent", 0, 20, "%",
        "felt cannot be pushed on, and felt pulled farther all over springs back off the core");

    /// <summary>Die against panel.</summary>
    public static readonly FieldRange DieOffset = new(
        "panel.dieOffsetMm", -2, 2, "mm", "more than the thickness of a cutting rule and any springback of felt");

    /// <summary>Seam gap.</summary>
    public static readonly FieldRange SeamGap = new("seam.seamGapMm", 0, 3, "mm", "a wider gap leaves the core bare");

    /// <summary>Design angle to the warp.</summary>
    public static readonly FieldRange WarpAngle = new(
        "panel.warpAngleDeg", -180, 180, "degrees", "a half-turn either way covers every direction");

    /// <summary>Tolerance of the core diameter.</summary>
    public static readonly FieldRange CoreDiameterTolerance = new(
        "tolerances.coreDiameterMm", 0, 5, "mm", "a core that far off is another core");

    /// <summary>Tolerance of the core mass.</summary>
    public static readonly FieldRange CoreMassTolerance = new("tolerances.coreMassG", 0, 50, "g", "a core that far off is another core");

    /// <summary>Tolerance of the cement thickness.</summary>
    public static readonly FieldRange CementThicknessTolerance = new("tolerances.cementThicknessMm", 0, 2, "mm", "no film is thicker");

    /// <summary>Tolerance of the cement mass per area.</summary>
    public static readonly FieldRange CementMassTolerance = new("tolerances.cementMassPerAreaGsm", 0, 2000, "g/m2", "no film is heavier");

    /// <summary>Tolerance of the finished felt thickness.</summary>
    public static readonly FieldRange FinishedThicknessTolerance = new(
        "tolerances.feltFinishedThicknessMm", 0, 5, "mm", "felt that far off is another felt");

    /// <summary>Tolerance of the felt mass per area.</summary>
    public static readonly FieldRange FeltMassTolerance = new(
        "tolerances.feltMassPerAreaGsm", 0, 1000, "g/m2", "felt that far off is another felt");

    // The waist as an angle seen from the ball's centre, degrees: a narrower waist tears when it is pulled over; the seam families reach no
    // wider.
    private const double NarrowestWaistDeg = 20;
    private const double WidestWaistDeg = 90;

    /// <summary>The specification itself when every number lies in its range.</summary>
    /// <exception cref="InputException">Names the first field that does not.</exception>
    public static BallSpec Checked(BallSpec ball)
    {
        CoreDiameter.Checked(ball.Core.OuterDiameterMm);
        CoreMass.Checked(ball.Core.MassG);
        CementThickness.Checked(ball.Cement.ThicknessMm);
        CementMass.Checked(ball.Cement.MassPerAreaGsm);
        CheckFelt(ball.Felt);
        SeamGap.Checked(ball.Seam.SeamGapMm);
        if (ball.Seam.Curve != SeamFamily.Points)
        {
            WaistOn(ball.FittedRadiusMm).Checked(ball.Seam.WaistMm);
        }

        if (ball.Panel.WarpAngleDeg is { } angle)
        {
            WarpAngle.Checked(angle);
        }

        DieOffset.Checked(ball.Panel.DieOffsetMm);
        if (ball.Tolerances is { } off)
        {
            CheckTolerances(off);
        }

        return ball;
    }

    private static void CheckTolerances(ToleranceSpec off)
    {
        CoreDiameterTolerance.Checked(off.CoreDiameterMm);
        CoreMassTolerance.Checked(off.CoreMassG);
        CementThicknessTolerance.Checked(off.CementThicknessMm);
        CementMassTolerance.Checked(off.CementMassPerAreaGsm);
        FinishedThicknessTolerance.Checked(off.FeltFinishedThicknessMm);
        FeltMassTolerance.Checked(off.FeltMassPerAreaGsm);
    }

    /// <summary>Waist on a fitted sphere, rounded towards the inside, so that the ends as they are shown are allowed.</summary>
    /// <param name="radiusMm">Radius of the fitted sphere, mm.</param>
    public static FieldRange WaistOn(double radiusMm) => new(
        "seam.waistMm", Math.Ceiling(NarrowestWaistDeg * radiusMm * Math.PI / 180 * 1000) / 1000,
        Math.Floor(WidestWaistDeg * radiusMm * Math.PI / 180 * 1000) / 1000, "mm",
        $"on this sphere that is {NarrowestWaistDeg} to {WidestWaistDeg} degrees; narrower tears, wider is no waist");

    private static void CheckFelt(FeltSpec felt)
    {
        FeltThickness.Checked(felt.ThicknessMm);
        FinishedThickness.Checked(felt.FinishedThicknessMm);
        FeltMass.Checked(felt.MassPerAreaGsm);
        WarpModulus.Checked(felt.WarpModulusNPerMm);
        WeftModulus.Checked(felt.WeftModulusNPerMm);
        ShearModulus.Checked(felt.ShearModulusNPerMm);
        Poisson.Checked(felt.Poisson);
        NeutralLayer.Checked(felt.NeutralLayer);
        MaxStretch.Checked(felt.MaxStretchPercent);
        MaxEdgeCompression.Checked(felt.MaxEdgeCompressionPercent);
        ShrinkWarp.Checked(felt.CureShrinkWarpPercent);
        ShrinkWeft.Checked(felt.CureShrinkWeftPercent);
        ApplicationStretchWarp.Checked(felt.ApplicationStretchWarpPercent);
        ApplicationStretchWeft.Checked(felt.ApplicationStretchWeftPercent);
    }
}
