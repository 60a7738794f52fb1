namespace FeltNest.Files.Fields;

/// <summary>A day, written 2026-03-31.</summary>
internal sealed class DayField : TextField
{
    /// <summary>A day of the years that plans may speak of.</summary>
    public DayField(string name, string meaning = "")
        : base(name, meaning) => Pattern = "^\\d{4}-\\d\\d-\\d\\d$";

    /// <inheritdoc/>
    public override string Kind => "day";
}
