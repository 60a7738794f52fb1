namespace FeltNest.Drawing;

/// <summary>Anything that can be drawn.</summary>
internal abstract record Mark;
