using FeltNest.Ball.Tolerance;

namespace FeltNest.Ball.Ranges;

/// <summary>How far the numbers of a ball may be off.</summary>
internal static class ToleranceRanges
{
    /// <summary>Tolerance of the core diameter.</summary>
    public static readonly FieldRange CoreDiameterTolerance = new()
    {
        Field = "tolerances.coreDiameterMm",
        Low = 0,
        High = 5,
        Unit = "mm",
        Reason = "a core that far off is another core",
    };

    /// <summary>Tolerance of the core mass.</summary>
    public static readonly FieldRange CoreMassTolerance = new()
    {
        Field = "tolerances.coreMassG",
        Low = 0,
        High = 50,
        Unit = "g",
        Reason = "a core that far off is another core",
    };

    /// <summary>Tolerance of the cement thickness.</summary>
    public static readonly FieldRange CementThicknessTolerance = new()
    {
        Field = "tolerances.cementThicknessMm",
        Low = 0,
        High = 2,
        Unit = "mm",
        Reason = "no film is thicker",
    };

    /// <summary>Tolerance of the cement mass per area.</summary>
    public static readonly FieldRange CementMassTolerance = new()
    {
        Field = "tolerances.cementMassPerAreaGsm",
        Low = 0,
        High = 2000,
        Unit = "g/m2",
        Reason = "no film is heavier",
    };

    /// <summary>Tolerance of the finished felt thickness.</summary>
    public static readonly FieldRange FinishedThicknessTolerance = new()
    {
        Field = "tolerances.feltFinishedThicknessMm",
        Low = 0,
        High = 5,
        Unit = "mm",
        Reason = "felt that far off is another felt",
    };

    /// <summary>Tolerance of the felt mass per area.</summary>
    public static readonly FieldRange FeltMassTolerance = new()
    {
        Field = "tolerances.feltMassPerAreaGsm",
        Low = 0,
        High = 1000,
        Unit = "g/m2",
        Reason = "felt that far off is another felt",
    };

    /// <summary>Tolerance of the felt thickness as cut.</summary>
    public static readonly FieldRange FeltThicknessTolerance = new()
    {
        Field = "tolerances.feltThicknessMm",
        Low = 0,
        High = 5,
        Unit = "mm",
        Reason = "felt that far off is another felt",
    };

    /// <summary>Tolerance of the neutral layer.</summary>
    public static readonly FieldRange NeutralLayerTolerance = new()
    {
        Field = "tolerances.neutralLayer",
        Low = 0,
        High = 0.5,
        Unit = string.Empty,
        Reason = "more would reach past a face of the felt",
    };

    /// <summary>Tolerance of the modulus along the warp.</summary>
    public static readonly FieldRange WarpModulusTolerance = new()
    {
        Field = "tolerances.warpModulusNPerMm",
        Low = 0,
        High = 500,
        Unit = "N/mm",
        Reason = "felt that far off is another felt",
    };

    /// <summary>Tolerance of the modulus along the weft.</summary>
    public static readonly FieldRange WeftModulusTolerance = new()
    {
        Field = "tolerances.weftModulusNPerMm",
        Low = 0,
        High = 500,
        Unit = "N/mm",
        Reason = "felt that far off is another felt",
    };

    /// <summary>Tolerance of the shear modulus.</summary>
    public static readonly FieldRange ShearModulusTolerance = new()
    {
        Field = "tolerances.shearModulusNPerMm",
        Low = 0,
        High = 500,
        Unit = "N/mm",
        Reason = "felt that far off is another felt",
    };

    /// <summary>Tolerance of the Poisson's ratio.</summary>
    public static readonly FieldRange PoissonTolerance = new()
    {
        Field = "tolerances.poisson",
        Low = 0,
        High = 0.5,
        Unit = string.Empty,
        Reason = "felt that far off is another felt",
    };

    /// <summary>Tolerance of the shrinkage along the warp.</summary>
    public static readonly FieldRange CureShrinkWarpTolerance = new()
    {
        Field = "tolerances.cureShrinkWarpPercent",
        Low = 0,
        High = 10,
        Unit = "%",
        Reason = "felt that far off is not ready to be cut",
    };

    /// <summary>Tolerance of the shrinkage along the weft.</summary>
    public static readonly FieldRange CureShrinkWeftTolerance = new()
    {
        Field = "tolerances.cureShrinkWeftPercent",
        Low = 0,
        High = 10,
        Unit = "%",
        Reason = "felt that far off is not ready to be cut",
    };

    /// <summary>Tolerance of the stretch on application along the warp.</summary>
    public static readonly FieldRange ApplicationStretchWarpTolerance = new()
    {
        Field = "tolerances.applicationStretchWarpPercent",
        Low = 0,
        High = 10,
        Unit = "%",
        Reason = "no fitter pulls that unevenly",
    };

    /// <summary>Tolerance of the stretch on application along the weft.</summary>
    public static readonly FieldRange ApplicationStretchWeftTolerance = new()
    {
        Field = "tolerances.applicationStretchWeftPercent",
        Low = 0,
        High = 10,
        Unit = "%",
        Reason = "no fitter pulls that unevenly",
    };

    /// <summary>Tolerance of the angle to the warp.</summary>
    public static readonly FieldRange WarpAngleTolerance = new()
    {
        Field = "tolerances.warpAngleDeg",
        Low = 0,
        High = 10,
        Unit = "degrees",
        Reason = "panels that far askew are another layout",
    };

    /// <summary>Tolerance of the die offset.</summary>
    public static readonly FieldRange DieOffsetTolerance = new()
    {
        Field = "tolerances.dieOffsetMm",
        Low = 0,
        High = 1,
        Unit = "mm",
        Reason = "a die that far off is scrap",
    };

    /// <summary>Tolerance of the placing along.</summary>
    public static readonly FieldRange PlacingAlongTolerance = new()
    {
        Field = "tolerances.placingAlongMm",
        Low = 0,
        High = 5,
        Unit = "mm",
        Reason = "a panel that far off is taken off again",
    };

    /// <summary>Tolerance of the placing across.</summary>
    public static readonly FieldRange PlacingAcrossTolerance = new()
    {
        Field = "tolerances.placingAcrossMm",
        Low = 0,
        High = 5,
        Unit = "mm",
        Reason = "a panel that far off is taken off again",
    };

    /// <summary>Tolerance of the turn of a panel.</summary>
    public static readonly FieldRange PlacingTurnTolerance = new()
    {
        Field = "tolerances.placingTurnDeg",
        Low = 0,
        High = 5,
        Unit = "degrees",
        Reason = "a panel that far askew is taken off again",
    };

    /// <summary>Refuses tolerances of which one lies outside its range, or asks for an angle to the warp that the ball does not
    /// state.</summary>
    /// <exception cref="InputException">Names the first that does.</exception>
    public static void Check(BallSpec ball, ToleranceSpec off)
    {
        CoreMassTolerance.Checked(off.CoreMassG);
        CementMassTolerance.Checked(off.CementMassPerAreaGsm);
        FinishedThicknessTolerance.Checked(off.FeltFinishedThicknessMm);
        FeltMassTolerance.Checked(off.FeltMassPerAreaGsm);
        foreach ((FieldRange range, double value) in Stated(off))
        {
            range.Checked(value);
        }

        if (ball.Panel.WarpAngleDeg is null && AskingForAngle(off).FirstOrDefault(one => one.Value > 0) is { Range: { } asks } one)
        {
            throw new InputException(null, asks.Field, FormattableString.Invariant(
                $"{one.Value} {asks.Unit}; what is off along one direction alone needs panel.warpAngleDeg as an angle, and it is any"));
        }
    }

    private static IEnumerable<(FieldRange Range, double Value)> Stated(ToleranceSpec off) => GapTolerances(off)
        .Where(one => one.Value is not null)
        .Select(one => (one.Range, one.Value!.Value));

    private static IEnumerable<(FieldRange Range, double? Value)> AskingForAngle(ToleranceSpec off) =>
    [
        (WarpModulusTolerance, off.WarpModulusNPerMm), (WeftModulusTolerance, off.WeftModulusNPerMm),
        (ShearModulusTolerance, off.ShearModulusNPerMm), (CureShrinkWarpTolerance, off.CureShrinkWarpPercent),
        (CureShrinkWeftTolerance, off.CureShrinkWeftPercent), (ApplicationStretchWarpTolerance, off.ApplicationStretchWarpPercent),
        (ApplicationStretchWeftTolerance, off.ApplicationStretchWeftPercent), (WarpAngleTolerance, off.WarpAngleDeg),
    ];

    private static IEnumerable<(FieldRange Range, double? Value)> GapTolerances(ToleranceSpec off) =>
    [
        (CoreDiameterTolerance, off.CoreDiameterMm), (CementThicknessTolerance, off.CementThicknessMm),
        (FeltThicknessTolerance, off.FeltThicknessMm), (NeutralLayerTolerance, off.NeutralLayer), (PoissonTolerance, off.Poisson),
        .. AskingForAngle(off), (DieOffsetTolerance, off.DieOffsetMm), (PlacingAlongTolerance, off.PlacingAlongMm),
        (PlacingAcrossTolerance, off.PlacingAcrossMm), (PlacingTurnTolerance, off.PlacingTurnDeg),
    ];
}
