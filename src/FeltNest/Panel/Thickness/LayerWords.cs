using System.Globalization;

namespace FeltNest.Panel.Thickness;

/// <summary>How tables and sheets name the layers of the felt.</summary>
internal static class LayerWords
{
    /// <summary>The name of a layer.</summary>
    public static string Of(FeltLayerName name) => name switch
    {
        FeltLayerName.GlueFace => "glue face",
        FeltLayerName.Middle => "middle",
        FeltLayerName.NapFace => "nap face",
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "no such layer"),
    };

    /// <summary>Where a layer lies against the neutral one.</summary>
    public static string Place(FeltLayer layer)
    {
        string side = layer.FromNeutralMm > 0 ? "outside" : "inside";
        return layer.FromNeutralMm == 0
            ? "the neutral layer"
            : string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(layer.FromNeutralMm):0.##} mm {side} the neutral layer");
    }
}
