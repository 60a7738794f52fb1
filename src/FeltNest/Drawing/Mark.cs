namespace FeltNest.Drawing;

/// <summary>Anything that can be drawn.</summary>
public abstract record Mark;
