namespace FeltNest.Drawing;

/// <summary>An upright rectangle on the sheet, mm.</summary>
/// <param name="MinX">Left.</param>
/// <param name="MinY">Lower side.</param>
/// <param name="MaxX">Right.</param>
/// <param name="MaxY">Upper side.</param>
public readonly record struct Box(double MinX, double MinY, double MaxX, double MaxY)
{
    /// <summary>Width, mm.</summary>
    public double Width => MaxX - MinX;

    /// <summary>Height, mm.</summary>
    public double Height => MaxY - MinY;
}
