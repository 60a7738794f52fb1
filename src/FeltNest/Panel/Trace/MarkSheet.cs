using FeltNest.Geometry;

namespace FeltNest.Panel.Trace;

/// <summary>The sheet of reference marks: six marks on a rectangle, the panel inside it. A mark is a black disc, in it a white one, in that
/// a black one: three circles about one middle.</summary>
internal static class MarkSheet
{
    /// <summary>Radii of the three circles, mm.</summary>
    public static readonly double[] Radii = [6, 4, 2];

    /// <summary>Half the room for the panel along and up the sheet, mm: clear of the marks, and on A4 as on American letter
    /// paper.</summary>
    public static readonly Point2 Room = new(76, 112);

    /// <summary>Middles of the marks seen from the sheet's middle, mm, counter-clockwise from the lower left.</summary>
    public static readonly Point2[] Marks =
        [new(-86, -120), new(86, -120), new(86, 0), new(86, 120), new(-86, 120), new(-86, 0)];
}
