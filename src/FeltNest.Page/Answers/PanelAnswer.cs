using FeltNest.Ball;
using FeltNest.Page.Work;
using FeltNest.Report;

namespace FeltNest.Page.Answers;

/// <summary>A panel's figures.</summary>
internal sealed record PanelAnswer(
    string Name, double LengthMm, double WidthMm, double WaistMm, double AreaMm2, double PerimeterMm, double SphereRadiusMm,
    double SeamLengthMm, double MaxStretchPercent,
    double EdgeMaxCompressionPercent, double EdgeMismatchPercent, double CoreMm, double CementMm, double FeltMm, double SeamWaistMm,
    double EdgeLimitPercent, double? WarpAngleDeg, string[] Warnings)
{
    /// <summary>The answer for a panel.</summary>
    public static PanelAnswer Of(PagePanel panel)
    {
        (BallSpec ball, Panel.FlatPanel flat) = (panel.Ball, panel.Flat);
        return new PanelAnswer(
            ball.Name, flat.LengthMm, flat.WidthMm, flat.WaistMm, flat.AreaMm2, flat.PerimeterMm, flat.Sphere.RadiusMm,
            flat.Sphere.SeamLengthMm, flat.Strain.MaxStretchPercent,
            flat.Strain.EdgeMaxCompressionPercent, flat.Strain.EdgeMismatchPercent, ball.Core.OuterDiameterMm, ball.Cement.ThicknessMm,
            ball.Felt.ThicknessMm, ball.Seam.WaistMm, ball.Felt.MaxEdgeCompressionPercent, ball.Panel.WarpAngleDeg,
            [.. PanelWarnings.Of(ball, flat, MassBudget.Of(ball, flat.AreaMm2))]);
    }
}
