using FeltNest.Geometry;

namespace FeltNest.Runs;

/// <summary>One use of the library from question to files: made with what is asked for, it knows the names of its files before any work is
/// done. Front ends translate their words into it and its outcome into theirs.</summary>
internal interface IRun
{
    /// <summary>Names of the files it gives, the result's JSON first.</summary>
    public IReadOnlyList<string> FileNames { get; }

    /// <summary>What reading the inputs assumed and healed, one sentence each.</summary>
    public IReadOnlyList<string> Notes { get; }

    /// <summary>Does the work.</summary>
    /// <param name="resultThere">Called when there is a result to hand over, be it the best so far, before anything is drawn; never by a
    /// run that has nothing to give before it is done. May be null.</param>
    /// <param name="search">Ends the search with the best so far.</param>
    /// <param name="interrupt">The one who asked wants an end: what only adds comfort is left out.</param>
    /// <exception cref="InputException">Input that cannot be used, or something asked for that makes no sense.</exception>
    /// <exception cref="GeometryException">An outline that is none.</exception>
    /// <exception cref="NoAnswerException">Sound input without an answer.</exception>
    /// <exception cref="OperationCanceledException">Ended before there was a result.</exception>
    public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt);
}
