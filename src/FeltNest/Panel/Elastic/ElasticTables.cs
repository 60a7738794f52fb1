using FeltNest.Panel.Disc;

namespace FeltNest.Panel.Elastic;

/// <summary>What an elastic problem tabulates of its polynomials alone: the same for every seam and felt, so that many seams can share
/// it.</summary>
internal sealed class ElasticTables
{
    // The energy is a quotient of polynomials: exact quadrature for three times the map's degree leaves its error below that of the map.
    private const int Share = 3;

    /// <summary>Tabulates the functions of a space.</summary>
    public ElasticTables(FlatSpace space)
    {
        Space = space;
        Rule = DiscQuadrature.Exact(Share * space.Degree, space.IsMirrorSymmetric);
        U = new GradientTable(space.U, Rule);
        V = space.IsMirrorSymmetric ? new GradientTable(space.V, Rule) : U;
    }

    /// <summary>The polynomials.</summary>
    public FlatSpace Space { get; }

    /// <summary>Places and weights of the energy's sum.</summary>
    public DiscQuadrature Rule { get; }

    /// <summary>Gradients of the functions of u at those places.</summary>
    public GradientTable U { get; }

    /// <summary>Gradients of the functions of v.</summary>
    public GradientTable V { get; }
}
