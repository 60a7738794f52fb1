namespace FeltNest.Cli;

/// <summary>What the process tells its caller.</summary>
internal static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>The program failed: a bug.</summary>
    public const int Failed = 1;

    /// <summary>Bad usage or bad input.</summary>
    public const int BadInput = 2;

    /// <summary>Sound input without an answer.</summary>
    public const int NoAnswer = 3;

    /// <summary>A check found a violation.</summary>
    public const int Violation = 4;

    /// <summary>Interrupted.</summary>
    public const int Interrupted = 130;
}
