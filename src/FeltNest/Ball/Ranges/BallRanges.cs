namespace FeltNest.Ball.Ranges;

/// <summary>What every number of a ball specification may be.</summary>
internal static class BallRanges
{
    /// <summary>Core diameter.</summary>
    public static readonly FieldRange CoreDiameter = new()
    {
        Field = "core.outerDiameterMm",
        Low = 20,
        High = 200,
        Unit = "mm",
        Reason = "below 20 the felt is thicker than it can bend, above 200 it is no ball of this kind",
    };

    /// <summary>Core mass.</summary>
    public static readonly FieldRange CoreMass = new()
    {
        Field = "core.massG",
        Low = 1,
        High = 2000,
        Unit = "g",
        Reason = "no rubber core of 20 to 200 mm is lighter or heavier",
    };

    /// <summary>Cement thickness.</summary>
    public static readonly FieldRange CementThickness = new()
    {
        Field = "cement.thicknessMm",
        Low = 0,
        High = 2,
        Unit = "mm",
        Reason = "thicker is a layer of its own, not an adhesive film",
    };

    /// <summary>Cement mass per area.</summary>
    public static readonly FieldRange CementMass = new()
    {
        Field = "cement.massPerAreaGsm",
        Low = 0,
        High = 2000,
        Unit = "g/m2",
        Reason = "more than a 2 mm film can weigh",
    };

    /// <summary>Felt thickness as cut.</summary>
    public static readonly FieldRange FeltThickness = new()
    {
        Field = "felt.thicknessMm",
        Low = 0.3,
        High = 12,
        Unit = "mm",
        Reason = "thinner is no felt, thicker does not bend round a ball",
    };

    /// <summary>Felt thickness on the finished ball.</summary>
    public static readonly FieldRange FinishedThickness = new()
    {
        Field = "felt.finishedThicknessMm",
        Low = 0.3,
        High = 15,
        Unit = "mm",
        Reason = "thinner is no felt, thicker is more than raising the nap can give",
    };

    /// <summary>Felt mass per area.</summary>
    public static readonly FieldRange FeltMass = new()
    {
        Field = "felt.massPerAreaGsm",
        Low = 50,
        High = 3000,
        Unit = "g/m2",
        Reason = "lighter is a veil, heavier is a board",
    };

    /// <summary>Modulus along the warp.</summary>
    public static readonly FieldRange WarpModulus = new()
    {
        Field = "felt.warpModulusNPerMm",
        Low = 0.01,
        High = 1000,
        Unit = "N/mm",
        Reason = "softer carries no load, stiffer is no felt",
    };

    /// <summary>Modulus along the weft.</summary>
    public static readonly FieldRange WeftModulus = new()
    {
        Field = "felt.weftModulusNPerMm",
        Low = 0.01,
        High = 1000,
        Unit = "N/mm",
        Reason = "softer carries no load, stiffer is no felt",
    };

    /// <summary>Shear modulus.</summary>
    public static readonly FieldRange ShearModulus = new()
    {
        Field = "felt.shearModulusNPerMm",
        Low = 0.001,
        High = 1000,
        Unit = "N/mm",
        Reason = "softer carries no load, stiffer is no felt",
    };

    /// <summary>Poisson's ratio.</summary>
    public static readonly FieldRange Poisson = new()
    {
        Field = "felt.poisson",
        Low = 0,
        High = 0.9,
        Unit = string.Empty,
        Reason = "at 1 a flat sheet could not change its area at all",
    };

    /// <summary>Neutral layer.</summary>
    public static readonly FieldRange NeutralLayer = new()
    {
        Field = "felt.neutralLayer",
        Low = 0,
        High = 1,
        Unit = string.Empty,
        Reason = "0 is the felt's core side, 1 its outside",
    };

    /// <summary>Stretch limit.</summary>
    public static readonly FieldRange MaxStretch = new()
    {
        Field = "felt.maxStretchPercent",
        Low = 0,
        High = 100,
        Unit = "%",
        Reason = "no felt takes twice its length",
    };

    /// <summary>Edge compression limit.</summary>
    public static readonly FieldRange MaxEdgeCompression = new()
    {
        Field = "felt.maxEdgeCompressionPercent",
        Low = 0,
        High = 100,
        Unit = "%",
        Reason = "100 would leave no edge at all",
    };

    /// <summary>Compression limit anywhere on the panel.</summary>
    public static readonly FieldRange MaxCompression = new()
    {
        Field = "felt.maxCompressionPercent",
        Low = 0,
        High = 100,
        Unit = "%",
        Reason = "100 would leave no felt at all",
    };

    /// <summary>Shrinkage along the warp.</summary>
    public static readonly FieldRange ShrinkWarp = new()
    {
        Field = "felt.cureShrinkWarpPercent",
        Low = 0,
        High = 30,
        Unit = "%",
        Reason = "felt that shrinks more is not ready to be cut",
    };

    /// <summary>Shrinkage along the weft.</summary>
    public static readonly FieldRange ShrinkWeft = new()
    {
        Field = "felt.cureShrinkWeftPercent",
        Low = 0,
        High = 30,
        Unit = "%",
        Reason = "felt that shrinks more is not ready to be cut",
    };

    /// <summary>Stretch along the warp when applied.</summary>
    public static readonly FieldRange ApplicationStretchWarp = new()
    {
        Field = "felt.applicationStretchWarpPercent",
        Low = 0,
        High = 20,
        Unit = "%",
        Reason = "felt cannot be pushed on, and felt pulled farther all over springs back off the core",
    };

    /// <summary>Stretch along the weft when applied.</summary>
    public static readonly FieldRange ApplicationStretchWeft = new()
    {
        Field = "felt.applicationStretchWeftPercent",
        Low = 0,
        High = 20,
        Unit = "%",
        Reason = "felt cannot be pushed on, and felt pulled farther all over springs back off the core",
    };

    /// <summary>Die against panel.</summary>
    public static readonly FieldRange DieOffset = new()
    {
        Field = "panel.dieOffsetMm",
        Low = -2,
        High = 2,
        Unit = "mm",
        Reason = "more than the thickness of a cutting rule and any springback of felt",
    };

    /// <summary>Seam gap.</summary>
    public static readonly FieldRange SeamGap = new()
    {
        Field = "seam.seamGapMm",
        Low = 0,
        High = 3,
        Unit = "mm",
        Reason = "a wider gap leaves the core bare",
    };

    /// <summary>Design angle to the warp.</summary>
    public static readonly FieldRange WarpAngle = new()
    {
        Field = "panel.warpAngleDeg",
        Low = -180,
        High = 180,
        Unit = "degrees",
        Reason = "a half-turn either way covers every direction",
    };

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
        if (ball.Seam.Adhesive is { } adhesive)
        {
            AdhesiveRanges.Least.Checked(adhesive.LeastMm);
            AdhesiveRanges.Most.Checked(adhesive.MostMm);
        }

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
            ToleranceRanges.Check(ball, off);
        }

        return ball;
    }

    /// <summary>Waist on a fitted sphere, rounded towards the inside, so that the ends as they are shown are allowed.</summary>
    /// <param name="radiusMm">Radius of the fitted sphere, mm.</param>
    public static FieldRange WaistOn(double radiusMm) => new()
    {
        Field = "seam.waistMm",
        Low = Math.Ceiling(NarrowestWaistDeg * radiusMm * Math.PI / 180 * 1000) / 1000,
        High = Math.Floor(WidestWaistDeg * radiusMm * Math.PI / 180 * 1000) / 1000,
        Unit = "mm",
        Reason = $"on this sphere that is {NarrowestWaistDeg} to {WidestWaistDeg} degrees; narrower tears, wider is no waist",
    };

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
        if (felt.MaxCompressionPercent is { } most)
        {
            MaxCompression.Checked(most);
        }

        ShrinkWarp.Checked(felt.CureShrinkWarpPercent);
        ShrinkWeft.Checked(felt.CureShrinkWeftPercent);
        ApplicationStretchWarp.Checked(felt.ApplicationStretchWarpPercent);
        ApplicationStretchWeft.Checked(felt.ApplicationStretchWeftPercent);
    }
}
