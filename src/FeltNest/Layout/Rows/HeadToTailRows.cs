using FeltNest.Layout.Polish;

namespace FeltNest.Layout.Rows;

/// <summary>stub</summary>
internal static class HeadToTailRows
{
    internal static List<LayStart> Best(LayoutRequest request, TiltRange tilts, SearchEffort effort, CancellationToken stop) => [];

    internal static List<(double Density, PoseModel Model, double Parts)> Plane(LayoutRequest request, SearchEffort effort, CancellationToken stop) => [];
}
