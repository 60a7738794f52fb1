using FeltNest.Ball.Ranges;

namespace FeltNest.Files.Fields;

/// <summary>A whole number with its range.</summary>
internal sealed class WholeField : NumberField
{
    /// <summary>A whole number with a range that others may share; its name is the last step of the range's.</summary>
    public WholeField(FieldRange range, string meaning = "")
        : base(range, meaning)
    {
    }

    /// <summary>A whole number from <paramref name="low"/> to <paramref name="high"/>.</summary>
    public WholeField(string name, double low, double high, string meaning = "")
        : base(name, low, high, meaning)
    {
    }

    /// <summary>A whole number of any size.</summary>
    public WholeField(string name, string meaning = "")
        : base(name, meaning)
    {
    }

    /// <summary>What is counted, for a message: <c>of panels</c>; empty where that is not said.</summary>
    public string CountedWords => UnitWord.Length == 0 ? string.Empty : $"of {UnitWord}";

    /// <inheritdoc/>
    protected override string SchemaType => "integer";

    /// <inheritdoc/>
    protected override string KindOfNumber => "whole number";
}
