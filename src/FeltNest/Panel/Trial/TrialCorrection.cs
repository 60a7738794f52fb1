using FeltNest.Ball;

namespace FeltNest.Panel.Trial;

/// <summary>From readings to the corrected panel.</summary>
internal static class TrialCorrection
{
    /// <summary>Studies readings and corrects the panel where it can be mended.</summary>
    /// <param name="ball">The ball that was wrapped.</param>
    /// <param name="readings">The readings.</param>
    /// <param name="file">Where they came from, for faults.</param>
    /// <exception cref="InputException">Places that cannot tell panel from placing, or a ball that has no panel.</exception>
    public static TrialResult Run(BallSpec ball, IReadOnlyList<TrialReading> readings, string file)
    {
        PanelRequest request = PanelRequest.For(ball);
        FlatPanel cut = PanelFlattener.Flatten(request);
        TrialFinding found = Study(ball, readings, file);
        return new TrialResult(
            found, cut, found.Mends ? PanelFlattener.Flatten(request with { Correction = found.Correction }) : null);
    }

    private static TrialFinding Study(BallSpec ball, IReadOnlyList<TrialReading> readings, string file)
    {
        try
        {
            return TrialStudy.Run(ball, readings);
        }
        catch (InputException error) when (error.File is null)
        {
            throw error.InFile(file);
        }
    }
}
