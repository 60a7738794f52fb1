namespace FeltNest.Files.Balls;

/// <summary>One field of a ball file that is given beside the file and goes before it.</summary>
internal sealed record BallChange
{
    /// <summary>Path of the field as in the file, such as <c>core.outerDiameterMm</c>.</summary>
    public required string Field { get; init; }

    /// <summary>The value as text: a number, or a word where the field takes one.</summary>
    public required string Value { get; init; }

    /// <summary>Path of the core's diameter.</summary>
    public const string CoreField = "core.outerDiameterMm";

    /// <summary>Path of the waist.</summary>
    public const string WaistField = "seam.waistMm";

    /// <summary>Path of the felt file.</summary>
    public const string FeltFileField = "felt.file";

    /// <summary>How results and messages name it: <c>core.outerDiameterMm=59</c>.</summary>
    public string Words => $"{Field}={Value}";

    /// <summary>How a ball's name says it: <c>core 59 mm</c>, <c>waist 26 mm</c>, else field and value.</summary>
    public string TradeWords => Field switch
    {
        CoreField => $"core {Value} mm",
        WaistField => $"waist {Value} mm",
        _ => $"{Field} {Value}",
    };

    /// <summary>How a folder's name says it: <c>core59</c>, <c>waist26</c>, else field and value.</summary>
    public string FolderWord => Field switch
    {
        CoreField => "core" + Value,
        WaistField => "waist" + Value,
        _ => Field + Value,
    };
}
