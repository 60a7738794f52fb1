namespace FeltNest.Panel;

/// <summary>One allowance between the computed shape and the cut panel.</summary>
/// <param name="Step">Place in the order of application, from 1.</param>
/// <param name="Name">What it is.</param>
/// <param name="Value">The value used, with its unit, as text.</param>
/// <param name="LengthEffectMm">Change of the panel's length, mm.</param>
/// <param name="WidthEffectMm">Change of the panel's greatest width, mm.</param>
/// <param name="AreaEffectMm2">Change of the panel's area, mm2.</param>
public sealed record PanelAllowance(int Step, string Name, string Value, double LengthEffectMm, double WidthEffectMm, double AreaEffectMm2);
