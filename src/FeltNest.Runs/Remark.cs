namespace FeltNest.Runs;

/// <summary>A sentence that has to be told beside the figures.</summary>
/// <param name="IsWarning">True for what must be looked at; false for what was assumed.</param>
/// <param name="Text">The sentence.</param>
internal sealed record Remark(bool IsWarning, string Text)
{
    /// <summary>Something that must be looked at.</summary>
    public static Remark Warning(string text) => new(true, text);

    /// <summary>Something assumed or chosen.</summary>
    public static Remark Note(string text) => new(false, text);
}
