using FeltNest.Layout;

namespace FeltNest.Die.Check;

/// <summary>Whether two layouts place the same parts at the same places.</summary>
internal static class SameLay
{
    // Places and lengths this near are the same, mm and degrees: what the check allows.
    private const double Slack = 1e-4;

    /// <summary>Compares bands, repeats, panels and parts.</summary>
    public static bool Are(RollLayout one, RollLayout other) =>
        one.Bands.Count == other.Bands.Count
            && one.Parts.Count == other.Parts.Count
            && one.Parts.Zip(other.Parts).All(p => Math.Abs(p.First.AreaMm2 - p.Second.AreaMm2) < Slack * p.First.PerimeterMm)
        && one.Bands
            .Zip(other.Bands)
            .All(b => Math.Abs(b.First.Repeat.LengthMm - b.Second.Repeat.LengthMm) < Slack
                && b.First.Repeat.Panels.Count == b.Second.Repeat.Panels.Count
            && b.First.Repeat.Panels
                .Zip(b.Second.Repeat.Panels)
                .All(p => p.First.Part == p.Second.Part
                    && Math.Abs(p.First.XMm - p.Second.XMm) < Slack
                    && Math.Abs(p.First.YMm - p.Second.YMm) < Slack
                && Math.Abs(p.First.AngleDeg - p.Second.AngleDeg) < Slack));
}
