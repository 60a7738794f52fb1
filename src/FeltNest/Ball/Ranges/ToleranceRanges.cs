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

    /// <summary>Refuses tolerances of which one lies outside its range.</summary>
    /// <exception cref="InputException">Names the first that does.</exception>
    public static void Check(ToleranceSpec off)
    {
        CoreDiameterTolerance.Checked(off.CoreDiameterMm);
        CoreMassTolerance.Checked(off.CoreMassG);
        CementThicknessTolerance.Checked(off.CementThicknessMm);
        CementMassTolerance.Checked(off.CementMassPerAreaGsm);
        FinishedThicknessTolerance.Checked(off.FeltFinishedThicknessMm);
        FeltMassTolerance.Checked(off.FeltMassPerAreaGsm);
    }
}
