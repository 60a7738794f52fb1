using System.Globalization;
using FeltNest.Ball;

namespace FeltNest.Panel.Proven;

/// <summary>The panel of a ball that comes nearest to a measured outline.</summary>
internal sealed record ProvenFit
{
    /// <summary>The ball with the values found.</summary>
    public required BallSpec Ball { get; init; }

    /// <summary>Its panel.</summary>
    public required FlatPanel Panel { get; init; }

    /// <summary>Neutral layer, waist and, where the outline shows one, edge limit.</summary>
    public required IReadOnlyList<ProvenValue> Values { get; init; }

    /// <summary>Values that were known and held.</summary>
    public IReadOnlyList<ProvenValue> Held { get; init; } = [];

    /// <summary>Seam families tried, the nearest first; empty where one alone was.</summary>
    public IReadOnlyList<ProvenFamily> Families { get; init; } = [];

    /// <summary>Whether the outline shows an edge limit that acts.</summary>
    public required bool ShowsLimit { get; init; }

    /// <summary>Measured outline against the panel, at equal steps of the measured outline's length.</summary>
    public required IReadOnlyList<ProvenDeviation> Deviations { get; init; }

    /// <summary>Independent directions in which the values can be changed together, the one least seen in the outline first.</summary>
    public required IReadOnlyList<ProvenTrade> Trades { get; init; }

    /// <summary>How far the measured outline was turned to lie on the panel, degrees.</summary>
    public required double TurnDeg { get; init; }

    /// <summary>Least rms distance, mm, at which two outlines are taken to be told apart: a twentieth of a millimetre is what a careful
    /// tracing of soft felt repeats to (assumed). A fit that is worse than this counts with its own rms.</summary>
    public const double LeastTellableMm = 0.05;

    /// <summary>Root mean square of the deviations, mm.</summary>
    public double RmsMm => Math.Sqrt(Deviations.Average(d => d.OffMm * d.OffMm));

    /// <summary>The deviation that is greatest in size.</summary>
    public ProvenDeviation Greatest => Deviations.MaxBy(d => Math.Abs(d.OffMm));

    /// <summary>Rms distance, mm, at which outlines are taken to be told apart here.</summary>
    public double TellableMm => Math.Max(LeastTellableMm, RmsMm);

    /// <summary>What the outline cannot tell from the neutral layer found; null where that was held.</summary>
    public NeutralLayerDoubt? Doubt => Values.Any(value => value.Field == "felt.neutralLayer") ? NeutralLayerDoubt.Of(Ball) : null;

    /// <summary>What the outline determines worst, in words.</summary>
    public string Weakest
    {
        get
        {
            // Parts of a direction below this share of its largest part, in spreads, are not worth naming.
            const double share = 0.3;
            ProvenTrade weakest = Trades[0];
            double[] parts = [.. weakest.Changes.Select((change, i) => Math.Abs(change) / Values[i].Spread)];
            int[] named = [.. Enumerable.Range(0, parts.Length).Where(i => parts[i] >= share * parts.Max())];
            string Change(int i) =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Values[i].Name} {Math.Abs(weakest.Changes[i]):0.###}{(Values[i].Unit.Length > 0 ? " " : string.Empty)}"
                        + $"{Values[i].Unit} {(weakest.Changes[i] * Math.Sign(weakest.Changes[named[0]]) > 0 ? "up" : "down")}");
            return named.Length == 1
                ? FormattableString.Invariant(
                    $"{Values[named[0]].Name} is determined worst, to +/- {Values[named[0]].Spread:0.###} {Values[named[0]].Unit}")
                    .TrimEnd()
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"{string.Join(", ", named[..^1].Select(i => Values[i].Name))} and {Values[named[^1]].Name} trade against each "
                        + $"other: {string.Join(" with ", named.Select(Change))} changes the outline by {TellableMm:0.00} mm rms only");
        }
    }
}
