using System.Globalization;
using FeltNest.Ball;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;
using FeltNest.Panel.Felt;
using FeltNest.Panel.Flatten;
using FeltNest.Panel.Shape;

namespace FeltNest.Panel.Elastic;

/// <summary>The mated elastic panel whose edge is pushed together no more than its felt takes up, with the panel without that limit beside
/// it.</summary>
/// <param name="law">Stiffness of the felt in the panel's axes.</param>
/// <param name="limit">Greatest compression along the edge, as a part of flat length, 0 to below 1.</param>
/// <param name="degree">Polynomial degree, odd.</param>
internal sealed class LimitedFlattening(FeltLaw law, double limit, int degree)
{
    /// <summary>Solves.</summary>
    /// <param name="domain">The piece of sphere.</param>
    /// <param name="radius">Radius of the sphere, mm.</param>
    /// <param name="stiffness">What the law is to be multiplied by to be in N/mm.</param>
    /// <exception cref="NoAnswerException">No panel was found that keeps the limit; the message gives the nearest limit that
    /// works.</exception>
    public (FlatMap Map, PanelSolve Solve, EdgeLimitReport Report) Flatten(SeamDomain domain, double radius, double stiffness)
    {
        ElasticPanel plain = Found(() => new ElasticFlattening(law, EdgeRule.Mated, null, degree).Panel(domain))
            ?? SeamFollowing.Panel(law, EdgeRule.Mated, degree, domain);
        double greatest = HeldEdge.GreatestCompression(new FlatEdge(plain.Map, 1));
        ElasticPanel panel = greatest <= limit ? plain : Try(domain, plain, limit) ?? throw NoPanel(domain, plain, greatest);
        double scale = stiffness * radius * radius;
        IReadOnlyList<SeamInterval> where = HeldEdge.Intervals(panel);
        return (panel.Map, panel.Solve, new EdgeLimitReport
        {
            LimitPercent = 100 * limit,
            SharePercent = HeldEdge.SharePercent(where, domain),
            Where = where,
            EdgeAreaMm2 = EdgeMeasure.Of(new FlatEdge(panel.Map, radius)).AreaMm2,
            EnergyNmm = PanelEnergy.Of(panel.Map, law) * scale,
            UnlimitedCompressionPercent = 100 * Math.Max(0, greatest),
            UnlimitedAreaMm2 = EdgeMeasure.Of(new FlatEdge(plain.Map, radius)).AreaMm2,
            UnlimitedEnergyNmm = PanelEnergy.Of(plain.Map, law) * scale,
        });
    }

    // Up the degrees; where a low degree's panel folds at its held edge, from the panel without a limit.
    private ElasticPanel? Try(SeamDomain domain, ElasticPanel plain, double at)
    {
        ElasticFlattening limited = new(law, EdgeRule.Mated, at, degree);
        return Found(() => limited.Panel(domain)) ?? Found(() => limited.Near(domain, plain));
    }

    private static ElasticPanel? Found(Func<ElasticPanel> solve)
    {
        try
        {
            return solve();
        }
        catch (NoAnswerException)
        {
            return null;
        }
    }

    private NoAnswerException NoPanel(SeamDomain domain, ElasticPanel plain, double greatest)
    {
        // Halvings in the search for the nearest limit that works: to a 64th of the way, as fine as a felt's limit is known.
        const int halvings = 6;
        double low = limit;
        double high = greatest;
        for (int i = 0; i < halvings; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Try(domain, plain, middle) is null ? (middle, high) : (low, middle);
        }

        return new NoAnswerException(string.Create(
            CultureInfo.InvariantCulture,
            $"felt.maxEdgeCompressionPercent: no panel was found whose edge is compressed at most {100 * limit:0.##} %; "
                + $"{Math.Ceiling(1000 * high) / 10:0.#} % works"));
    }
}
