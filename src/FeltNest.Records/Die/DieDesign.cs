using System.Globalization;
using FeltNest.Die.Bend;
using FeltNest.Die.Board;
using FeltNest.Die.Edge;
using FeltNest.Die.Gang;
using FeltNest.Die.Make;
using FeltNest.Die.Stock;
using FeltNest.Geometry;

namespace FeltNest.Die;

/// <summary>A gang die for a layout.</summary>
public sealed record DieDesign
{
    /// <summary>The question.</summary>
    public required GangRequest Request { get; init; }

    /// <summary>Cavities and strikes.</summary>
    public required DieGang Gang { get; init; }

    /// <summary>Cutting edge of each part of the layout that the die cuts, by the part's place in the layout's list; null for parts it
    /// does not cut.</summary>
    public required IReadOnlyList<DieEdge?> Edges { get; init; }

    /// <summary>Joint and bridges of each edge.</summary>
    public required IReadOnlyList<RulePlaces?> Places { get; init; }

    /// <summary>What stays between strikes.</summary>
    public required StrikeJoint Joint { get; init; }

    /// <summary>Force of one strike.</summary>
    public required CuttingForce Force { get; init; }

    /// <summary>Least gap between two cavities, mm; infinite for a single one.</summary>
    public required double LeastGapMm { get; init; }

    /// <summary>Where.</summary>
    public required Point2 LeastGapPlace { get; init; }

    /// <summary>What to watch.</summary>
    public required IReadOnlyList<MakeNote> Notes { get; init; }

    /// <summary>Where the rule of one cavity stands nearer to itself than bodies and ejection have room.</summary>
    public IReadOnlyList<NarrowPlace> Narrow { get; init; } = [];

    /// <summary>How the rule springs back; null without test bends.</summary>
    public Springback? Springback { get; init; }

    /// <summary>The pieces of rule.</summary>
    public IReadOnlyList<RuleStrip> Strips { get; init; } = [];

    /// <summary>How they are cut from stock; null where no length of stock is stated or a piece is longer.</summary>
    public RuleStock? Stock { get; init; }

    /// <summary>What a laser cuts of the board; null where the order does not say how.</summary>
    public BoardCut? Cut { get; init; }

    // Density of steel, kg/mm3 (7850 kg/m3, handbook value from memory).
    private const double Steel = 7.85e-6;

    /// <summary>Outlines of the ejection.</summary>
    public EjectionPieces Ejection { get; init; } = EjectionPieces.None;

    /// <summary>Share of the press's rating, %; null where no press is known or the force is a placeholder.</summary>
    public double? PressSharePercent =>
        Request.Press is { } press && Request.Order.Force.Basis == Order.ForceBasis.Measured ? 100 * Force.Kn / press.RatedForceKn : null;

    /// <summary>Least radius of any edge, mm.</summary>
    public double LeastRadiusMm => Edges.Where(e => e is not null).Min(e => e!.Pieces.Min(p => p.RadiusMm));

    /// <summary>Length of the cutting edge as made, mm; what two cavities share counts once.</summary>
    public double EdgeLengthMm => Gang.Cavities.Sum(c => Edges[c.Placed.Part]!.Arcs.Perimeter) - Gang.Common.SharedMm;

    /// <summary>Length of rule, mm: of the middle line of its body, to which it is cut and bent; rule that two cavities share counts once,
    /// by its edge.</summary>
    public double RuleLengthMm => Gang.Cavities.CountBy(c => c.Placed.Part).Sum(c => c.Value * RingMm(c.Key)) - Gang.Common.SharedMm;

    /// <summary>The force by which the press could not strike this die, were the placeholder true: what to do, or null where no press is
    /// given, it holds, or the force is measured.</summary>
    public string? DoNotRun =>
        Request is { Press: { } press, Order.Force.Basis: Order.ForceBasis.Placeholder } && Force.Kn > press.AllowedForceKn
        ? string.Create(
            CultureInfo.InvariantCulture,
            $"DO NOT RUN THIS DIE ON \"{press.Name}\" AS THINGS STAND: the estimated force of {Force.Kn:0.0} kN is above the "
                + $"{press.AllowedForceKn:0.0} kN it may give ({press.AllowedSharePercent:0.#} % of {press.RatedForceKn:0.#} kN). "
                + $"Measure the force on your own felt first; if it is no less, take fewer cavities or plies or a stronger press")
        : null;

    /// <summary>Length of the rule round one cavity of a part, mm: of the middle line of its body.</summary>
    public double RingMm(int part) => Edges[part]!.BesideMm(Request.Order.Rule.MiddleInWasteMm);

    /// <summary>Mass of board and rule, kg; ejection and fittings are not in it.</summary>
    public double MassKg =>
        (Gang.BoardLengthMm * Gang.BoardWidthMm * Request.Order.Board.ThicknessMm * 1e-9 * Request.Order.Board.DensityKgPerM3)
        + (RuleLengthMm * Request.Order.Rule.ThicknessMm * Request.Order.Rule.HeightMm * Steel);

    /// <summary>The different parts the die cuts, as places in the layout's list.</summary>
    public IReadOnlyList<int> Parts => [.. Enumerable.Range(0, Edges.Count).Where(i => Edges[i] is not null)];

    /// <summary>The letter of a part, empty where the die cuts a single one.</summary>
    public string Letter(int part) => CutParts.Letter(Parts.Count(p => p < part), Parts.Count);
}
