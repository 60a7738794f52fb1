using FeltNest.Layout;

namespace FeltNest.Yield;

/// <summary>Panels that can pair to one ball: the same part at the same angle to the warp (mod 180 degrees; one-way lays mod
/// 360).</summary>
/// <param name="Part">Index into the layout's parts.</param>
/// <param name="AngleDeg">The angle, degrees.</param>
internal readonly record struct PairingClass(int Part, double AngleDeg)
{
    // Angles this near are one class, degrees: far below what a die or a guide can hold.
    private const double SlackDeg = 1e-6;

    /// <summary>The class of a panel.</summary>
    public static PairingClass Of(PlacedPanel panel, bool oneWay) =>
        new(panel.Part, panel.AngleDeg - (Math.Floor(panel.AngleDeg / Turn(oneWay)) * Turn(oneWay)));

    /// <summary>Whether a panel belongs to it.</summary>
    public bool Holds(PlacedPanel panel, bool oneWay) =>
        Part == panel.Part && Math.Abs(Math.IEEERemainder(AngleDeg - panel.AngleDeg, Turn(oneWay))) <= SlackDeg;

    // Degrees after which a panel lies to warp and nap as before.
    private static double Turn(bool oneWay) => oneWay ? 360 : 180;
}
