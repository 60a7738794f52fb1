using System.Globalization;

namespace FeltNest.Files.Dxf;

/// <summary>One entity of a DXF drawing with its groups in order.</summary>
internal sealed record DxfEntity
{
    /// <summary>Named in errors.</summary>
    public required string File { get; init; }

    /// <summary>Name of the entity, such as LINE.</summary>
    public required string Kind { get; init; }

    /// <summary>Line its name stands on.</summary>
    public required int Line { get; init; }

    /// <summary>Its groups.</summary>
    public required IReadOnlyList<DxfGroup> Groups { get; init; }

    /// <summary>An error about this entity.</summary>
    public InputException Fault(string problem) => new(File, $"line {Line}, {Kind}", problem);

    /// <summary>The number under a code, or <paramref name="otherwise"/> where there is none.</summary>
    public double Number(int code, double? otherwise = null)
    {
        foreach (DxfGroup group in Groups)
        {
            if (group.Code == code)
            {
                return NumberOf(group);
            }
        }

        return otherwise ?? throw Fault($"has no group {code}");
    }

    /// <summary>The bits under a code, none where it is missing.</summary>
    public int Flags(int code) => (int)Number(code, 0);

    /// <summary>The value of a group as a finite number.</summary>
    public double NumberOf(DxfGroup group) =>
        double.TryParse(group.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value)
            ? value
            : throw new InputException(
                File, $"line {group.Line}, {Kind}", $"'{OneLine.Of(group.Text)}' under group {group.Code} is not a number");
}
