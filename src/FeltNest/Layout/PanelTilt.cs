namespace FeltNest.Layout;

/// <summary>How the tilt of a panel is told to people.</summary>
internal static class PanelTilt
{
    /// <summary>The tilt without half-turns, above -90 up to 90 degrees: what stands nearest to the warp.</summary>
    public static double Shown(double angleDeg)
    {
        double tilt = angleDeg % 180;
        if (tilt > 90)
        {
            return tilt - 180;
        }

        return tilt <= -90 ? tilt + 180 : tilt;
    }
}
