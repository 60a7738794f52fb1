namespace FeltNest.Files.Fields;

/// <summary>A currency.</summary>
internal sealed class CurrencyField : TextField
{
    /// <summary>A currency, as <see cref="CurrencyWord"/> allows it.</summary>
    public CurrencyField(string name, string meaning = "")
        : base(name, meaning) => Pattern = CurrencyWord.Pattern;

    /// <inheritdoc/>
    protected override string OwnRange => CurrencyWord.Range;
}
