namespace FeltNest;

/// <summary>Input that cannot be used: names the file, the field, the value found and what is allowed.</summary>
public sealed class InputException : FeltNestException
{
    /// <summary>An error about one field.</summary>
    /// <param name="file">File the value came from, or null when the file is not known yet.</param>
    /// <param name="field">Path of the field, such as <c>core.outerDiameterMm</c>, or null for the file as a whole.</param>
    /// <param name="problem">What was found and what is allowed, in one line.</param>
    /// <param name="inner">The cause, kept for debugging and never shown.</param>
    public InputException(string? file, string? field, string problem, Exception? inner = null)
        : base(string.Join(": ", new[] { file, field, problem }.Where(part => !string.IsNullOrEmpty(part))), inner)
    {
        File = file;
        Field = field;
        Problem = problem;
    }

    /// <summary>An error about a file as a whole, told by a part that does not know which file it is.</summary>
    /// <param name="problem">What was found and what is allowed, in one line.</param>
    public InputException(string problem)
        : this(null, null, problem)
    {
    }

    /// <summary>An error about something that was asked for and stands in no file.</summary>
    /// <param name="asked">What it was.</param>
    /// <param name="problem">What was found and what is allowed, in one line.</param>
    /// <param name="inner">The cause, kept for debugging and never shown.</param>
    public InputException(AskedFor asked, string problem, Exception? inner = null)
        : this(null, EnumWord.Of(asked).Replace('-', ' '), problem, inner) => Asked = asked;

    /// <summary>Refuses a number asked for that is out of its range.</summary>
    /// <param name="asked">What was asked for.</param>
    /// <param name="value">The number.</param>
    /// <param name="least">Least that is allowed.</param>
    /// <param name="most">Most that is allowed.</param>
    /// <param name="unit">Its unit; empty for a count.</param>
    /// <exception cref="InputException">Out of range, or not a number.</exception>
    public static void RequireWithin(AskedFor asked, double value, double least, double most, string unit)
    {
        if (!(value >= least && value <= most))
        {
            throw new InputException(
                asked, FormattableString.Invariant($"{value:0.######} is outside {least:0.###} to {most:0.###} {unit}").TrimEnd());
        }
    }

    /// <summary>What was asked for, where the fault is not about a file.</summary>
    public AskedFor? Asked { get; }

    /// <summary>File the value came from, or null.</summary>
    public string? File { get; }

    /// <summary>Path of the field, or null.</summary>
    public string? Field { get; }

    /// <summary>What was found and what is allowed.</summary>
    public string Problem { get; }

    /// <summary>What may be asked for beside, so that this is no fault any more; null for nothing.</summary>
    public AskedFor? Mend { get; init; }

    /// <summary>Further faults of the same list, in its order; this one is the first.</summary>
    public IReadOnlyList<InputException> Further { get; init; } = [];

    /// <summary>The same error with the file named: readers add what the parts below them cannot know.</summary>
    public InputException InFile(string file) => new(file, Field, Problem, InnerException) { Mend = Mend, Further = Further };

    /// <summary>The same error, with further ones behind it.</summary>
    public InputException With(IReadOnlyList<InputException> further) =>
        new(File, Field, Problem, InnerException) { Mend = Mend, Further = further };
}
