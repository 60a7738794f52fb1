using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;

namespace FeltNest.Panel.Elastic;

/// <summary>The panel's edge at equal steps of the seam parameter over half a turn: how fast each rim function runs along the seam
/// there.</summary>
internal sealed class EdgeTable
{
    private readonly double[] rates;

    /// <summary>Tabulates a basis at the middle of <paramref name="count"/> equal steps of s from 0 to pi.</summary>
    public EdgeTable(PanelDomain domain, DiscBasis basis, int count)
    {
        Count = count;
        S = [.. Enumerable.Range(0, count).Select(i => Math.PI * (i + 0.5) / count)];
        rates = new double[basis.RimCount * count];
        for (int i = 0; i < count; i++)
        {
            DomainEdge edge = domain.EdgeAt(S[i]);
            for (int m = 0; m < basis.RimCount; m++)
            {
                DiscMode mode = basis.Modes[m];
                double angle = mode.Turns * edge.Angle;
                double wave = mode.IsSine ? Math.Cos(angle) : -Math.Sin(angle);
                rates[(m * count) + i] = mode.Scale * mode.Turns * wave * edge.AngleSlope / edge.Speed;
            }
        }
    }

    /// <summary>Number of places.</summary>
    public int Count { get; }

    /// <summary>Seam parameters of the places.</summary>
    public double[] S { get; }

    /// <summary>Derivatives of a rim function by seam length at all places.</summary>
    public ReadOnlySpan<double> Rates(int function) => rates.AsSpan(function * Count, Count);
}
