using FeltNest.Ball;
using FeltNest.Ball.Ranges;
using FeltNest.Panel.Domain;
using FeltNest.Panel.Elastic;
using FeltNest.Panel.Felt;
using FeltNest.Panel.Shape;

namespace FeltNest.Panel.Proven;

/// <summary>The cut edge of a ball's panel as a function of neutral layer, waist and edge limit.</summary>
/// <param name="ball">The ball; those three are replaced.</param>
/// <param name="degree">Degree of the flat map.</param>
internal sealed class ProvenModel(BallSpec ball, int degree)
{
    /// <summary>Steps in which the values are thought of: a tenth of the felt's thickness, a millimetre of waist, one per cent of edge
    /// limit.</summary>
    public static readonly double[] Steps = [0.1, 1, 1];

    /// <summary>The ball with values, brought into their ranges: neutral layer, waist in mm, edge limit in per cent (100 is
    /// none).</summary>
    public BallSpec With(ReadOnlySpan<double> values)
    {
        BallSpec of = ball with
        {
            Felt = ball.Felt with { NeutralLayer = Math.Clamp(values[0], BallRanges.NeutralLayer.Low, BallRanges.NeutralLayer.High) },
        };
        FieldRange waist = BallRanges.WaistOn(of.FittedRadiusMm);
        return of with
        {
            Felt = of.Felt with
            {
                MaxEdgeCompressionPercent = Math.Clamp(values[2], BallRanges.MaxEdgeCompression.Low, BallRanges.MaxEdgeCompression.High),
            },
            Seam = of.Seam with { WaistMm = Math.Clamp(values[1], waist.Low, waist.High) },
        };
    }

    /// <summary>The values of <see cref="With"/> inside their ranges.</summary>
    public double[] Inside(ReadOnlySpan<double> values)
    {
        BallSpec of = With(values);
        return [of.Felt.NeutralLayer, of.Seam.WaistMm, of.Felt.MaxEdgeCompressionPercent];
    }

    /// <summary>The cut edge; null where the felt has no such panel.</summary>
    public CutEdge? Edge(double[] values) => Flat(values) is ({ } request, { } edge) ? AllowanceChain.Apply(request, edge).Edge : null;

    /// <summary>Greatest compression along the edge, per cent, of the panel without a limit; null where there is none.</summary>
    public double? EdgeTakesUp(double[] values) =>
        Flat([values[0], values[1], BallRanges.MaxEdgeCompression.High]) is (_, { } edge)
            ? 100 * HeldEdge.GreatestCompression(edge)
            : null;

    private (PanelRequest Request, FlatEdge? Edge) Flat(double[] values)
    {
        PanelRequest request = PanelRequest.For(With(values));
        FeltLaw unit = request.Law.Scaled(1 / request.Law.UU);
        double? limit = request.Edge == EdgeRule.Mated ? request.EdgeLimit : null;
        try
        {
            return (request, new FlatEdge(
                new ElasticFlattening(unit, request.Edge, limit, degree).Panel(new SeamDomain(request.Seam)).Map, request.RadiusMm));
        }
        catch (NoAnswerException)
        {
            return (request, null);
        }
    }
}
