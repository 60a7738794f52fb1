namespace FeltNest.Cli.Ending;

/// <summary>
/// How a run ends after an interrupt: either the command hands over what it has, or the run is ended with the word that there is nothing.
/// Which of the two comes first wins, so that files are never left half a set.
/// </summary>
internal sealed class HandOver
{
    private const int Working = 0;
    private const int Handing = 1;
    private const int Ended = 2;

    private int state = Working;

    /// <summary>What is said where a run is ended because its command did not hand over in time.</summary>
    public string LastWord { get; set; } = "interrupted before there was a result; nothing was written";

    /// <summary>The command is about to write results or its last words.</summary>
    /// <returns>False where the run was ended already: nothing may be written any more.</returns>
    public bool Begin() => Interlocked.CompareExchange(ref state, Handing, Working) != Ended;

    /// <summary>The run is to end without results.</summary>
    /// <returns>False where the command is handing over.</returns>
    public bool End() => Interlocked.CompareExchange(ref state, Ended, Working) == Working;
}
