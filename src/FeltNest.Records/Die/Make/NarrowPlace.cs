using FeltNest.Geometry;

namespace FeltNest.Die.Make;

/// <summary>A place where the rule of one cavity stands near to itself: a neck of the panel, or a slit of the waste.</summary>
public sealed record NarrowPlace
{
    /// <summary>The part, by its place in the layout's list.</summary>
    public required int Part { get; init; }

    /// <summary>True for a neck, where the panel lies between the two stretches of edge; false for a slit.</summary>
    public required bool InPanel { get; init; }

    /// <summary>Least width from edge to edge, mm.</summary>
    public required double WidthMm { get; init; }

    /// <summary>Middle between the two, in the part's frame, mm.</summary>
    public required Point2 Place { get; init; }

    /// <summary>Length of the first of the two stretches over which it is narrower than was asked for, mm.</summary>
    public required double LengthMm { get; init; }

    /// <summary>Two places of one edge are two rules where the way along it is more than so many times their distance: more than half round
    /// the circle over it. A bend or a corner of 80 degrees and more is none.</summary>
    public const double AnotherRule = Math.PI / 2 * 1.001;

    /// <summary>Sine of the most that the way across may lean from square to either edge, 15 degrees: what leans more is a
    /// corner.</summary>
    public const double MostLean = 0.2588;

    /// <summary>What it is called.</summary>
    public string Name => InPanel ? "neck" : "slit";
}
