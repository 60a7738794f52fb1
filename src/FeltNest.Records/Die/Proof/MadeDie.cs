namespace FeltNest.Die.Proof;

/// <summary>A die as it was made, held against its drawing.</summary>
internal sealed record MadeDie
{
    /// <summary>Name of the die.</summary>
    public required string Name { get; init; }

    /// <summary>By what its edges are judged.</summary>
    public required ProfileRule Rule { get; init; }

    /// <summary>Position tolerance: diameter of the circle round each place, mm.</summary>
    public required double PositionMm { get; init; }

    /// <summary>Cavities measured, by number.</summary>
    public required IReadOnlyList<MadeCavity> Cavities { get; init; }

    /// <summary>Numbers of cavities without points.</summary>
    public required IReadOnlyList<int> NotMeasured { get; init; }

    /// <summary>How far all points were turned, degrees.</summary>
    public required double TurnDeg { get; init; }

    /// <summary>Whether the die was seen from its other side.</summary>
    public required bool Mirrored { get; init; }

    /// <summary>Bends of each part's edge, the mean of its cavities.</summary>
    public required IReadOnlyList<(int Part, OpenedBend Bend)> Bends { get; init; }

    /// <summary>Mean distance of all points off their edges, mm: the next edge is to be set back by it.</summary>
    public double MeanOffMm => Cavities.Average(c => c.Edge.SquaresMeanMm);

    /// <summary>Cavity furthest off its place.</summary>
    public MadeCavity Farthest => Cavities.MaxBy(c => c.OffMm.Length)!;

    /// <summary>Cavity with the widest zone.</summary>
    public MadeCavity Worst => Cavities.MaxBy(c => c.Edge.ZoneMm)!;

    /// <summary>What is proved of the whole: one that does not conform is enough to refuse it, and a cavity without points leaves it
    /// open.</summary>
    public Conformity Verdict
    {
        get
        {
            Conformity[] all = [.. Cavities.SelectMany(c => (Conformity[])[c.Edge.Verdict, c.Position])];
            if (all.Contains(Conformity.DoesNotConform))
            {
                return Conformity.DoesNotConform;
            }

            return NotMeasured.Count == 0 && all.All(v => v == Conformity.Conforms) ? Conformity.Conforms : Conformity.Undecided;
        }
    }
}
