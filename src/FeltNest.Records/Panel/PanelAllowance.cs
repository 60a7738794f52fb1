namespace FeltNest.Panel;

/// <summary>One allowance between the computed shape and the cut panel.</summary>
public sealed record PanelAllowance
{
    /// <summary>Place in the order of application, from 1.</summary>
    public required int Step { get; init; }

    /// <summary>What it is.</summary>
    public required string Name { get; init; }

    /// <summary>The value used, with its unit, as text.</summary>
    public required string Value { get; init; }

    /// <summary>Change of the panel's length, mm.</summary>
    public required double LengthEffectMm { get; init; }

    /// <summary>Change of the panel's greatest width, mm.</summary>
    public required double WidthEffectMm { get; init; }

    /// <summary>Change of the panel's area, mm2.</summary>
    public required double AreaEffectMm2 { get; init; }
}
