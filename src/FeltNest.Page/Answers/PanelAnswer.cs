using FeltNest.Ball;
using FeltNest.Page.Work;
using FeltNest.Report;

namespace FeltNest.Page.Answers;

/// <summary>A panel's figures.</summary>
internal sealed record PanelAnswer
{
    public required string Name { get; init; }

    public required double LengthMm { get; init; }

    public required double WidthMm { get; init; }

    public required double WaistMm { get; init; }

    public required double AreaMm2 { get; init; }

    public required double PerimeterMm { get; init; }

    public required double SphereRadiusMm { get; init; }

    public required double SeamLengthMm { get; init; }

    public required double MaxStretchPercent { get; init; }

    public required double EdgeMaxCompressionPercent { get; init; }

    public required double EdgeMismatchPercent { get; init; }

    public required double CoreMm { get; init; }

    public required double CementMm { get; init; }

    public required double FeltMm { get; init; }

    public required double SeamWaistMm { get; init; }

    public required double EdgeLimitPercent { get; init; }

    public required double? WarpAngleDeg { get; init; }

    public required string[] Warnings { get; init; }

    /// <summary>The answer for a panel.</summary>
    public static PanelAnswer Of(PagePanel panel)
    {
        (BallSpec ball, Panel.FlatPanel flat) = (panel.Ball, panel.Flat);
        return new PanelAnswer
        {
            Name = ball.Name,
            LengthMm = flat.LengthMm,
            WidthMm = flat.WidthMm,
            WaistMm = flat.WaistMm,
            AreaMm2 = flat.AreaMm2,
            PerimeterMm = flat.PerimeterMm,
            SphereRadiusMm = flat.Sphere.RadiusMm,
            SeamLengthMm = flat.Sphere.SeamLengthMm,
            MaxStretchPercent = flat.Strain.MaxStretchPercent,
            EdgeMaxCompressionPercent = flat.Strain.EdgeMaxCompressionPercent,
            EdgeMismatchPercent = flat.Strain.EdgeMismatchPercent,
            CoreMm = ball.Core.OuterDiameterMm,
            CementMm = ball.Cement.ThicknessMm,
            FeltMm = ball.Felt.ThicknessMm,
            SeamWaistMm = ball.Seam.WaistMm,
            EdgeLimitPercent = ball.Felt.MaxEdgeCompressionPercent,
            WarpAngleDeg = ball.Panel.WarpAngleDeg,
            Warnings = [.. PanelWarnings.Of(ball, flat, MassBudget.Of(ball, flat.AreaMm2))],
        };
    }
}
