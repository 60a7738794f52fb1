namespace FeltNest.Panel.Trace;

/// <summary>A picture in three colours, 0 to 255, its first row at the bottom: x to the right, y upwards.</summary>
internal sealed record ColourPicture
{
    /// <summary>Pixels across.</summary>
    public required int Width { get; init; }

    /// <summary>Pixels up.</summary>
    public required int Height { get; init; }

    /// <summary>Red of each pixel, row by row.</summary>
    public required byte[] Red { get; init; }

    /// <summary>Green.</summary>
    public required byte[] Green { get; init; }

    /// <summary>Blue.</summary>
    public required byte[] Blue { get; init; }

    /// <summary>Dots per inch that the file states, or null.</summary>
    public double? StatedDpi { get; init; }

    /// <summary>Lightness of each pixel.</summary>
    public GreyGrid Lightness()
    {
        // Shares of the three colours in lightness (ITU-R BT.709).
        const float red = 0.2126f;
        const float green = 0.7152f;
        const float blue = 0.0722f;
        float[] values = new float[Red.Length];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = (red * Red[i]) + (green * Green[i]) + (blue * Blue[i]);
        }

        return new GreyGrid(Width, values);
    }

    /// <summary>One colour of each pixel.</summary>
    public GreyGrid Colour(byte[] of) => new(Width, Array.ConvertAll(of, value => (float)value));
}
