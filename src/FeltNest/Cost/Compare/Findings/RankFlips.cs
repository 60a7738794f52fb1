using FeltNest.Cost.Priced;

namespace FeltNest.Cost.Compare.Findings;

/// <summary>Looks at single assumptions, all others and the lays as they are: where another row becomes the cheapest, and what a stated
/// range does to the best row.</summary>
internal sealed class RankFlips(IReadOnlyList<CompareRow> rows, Func<CompareRow, PriceChange, decimal> total)
{
    // How finely a range is looked through, and how exactly a flip is then found, as shares of the range.
    private const int Places = 100;
    private const double Exact = 1e-6;

    private readonly CompareRow best = rows.First(r => r.Rank == 1);

    /// <summary>All flips found, in the order of the assumptions: within the range stated, else within the usual one.</summary>
    public IReadOnlyList<RankFlip> Flips(IEnumerable<Assumption> assumptions) => rows.Count < 2 ? [] :
    [
        .. from a in assumptions
           from at in new[] { Nearest(a, a.Low), Nearest(a, a.High) }
           where at is not null
           select new RankFlip
           {
               Assumption = a.Words,
               Now = a.Now,
               At = at.Value,
               Best = Winner(a, at.Value),
               IsStated = a.IsStated,
           },
    ];

    /// <summary>What each stated range does, the widest first.</summary>
    public IReadOnlyList<CostSwing> Swings(IEnumerable<Assumption> assumptions) =>
    [
        .. assumptions.Where(a => a.IsStated)
            .Select(a =>
                new CostSwing
                {
                    Assumption = a.Words,
                    Low = a.Low,
                    Likely = a.Now,
                    High = a.High,
                    TotalAtLow = total(best, a.At(a.Low).For(best.Case.Name)),
                    TotalAtHigh = total(best, a.At(a.High).For(best.Case.Name)),
                    BestAtLow = Winner(a, a.Low),
                    BestAtHigh = Winner(a, a.High),
                })
            .OrderByDescending(s => s.Span),
    ];

    private string Winner(Assumption assumption, double value)
    {
        PriceChange change = assumption.At(value);
        return rows.MinBy(r => (total(r, change.For(r.Case.Name)), r.Rank))!.Case.Name;
    }

    // Steps from here towards the end of the range; the first step over a flip is halved down to it, and the far side of it comes back.
    private double? Nearest(Assumption assumption, double to)
    {
        double from = assumption.Now;
        double range = to - from;
        for (int i = 1; i <= Places && range != 0; i++)
        {
            double near = from + (range * (i - 1) / Places);
            double far = from + (range * i / Places);
            if (Winner(assumption, far) == best.Case.Name)
            {
                continue;
            }

            while (Math.Abs(far - near) > Exact * Math.Abs(range))
            {
                double middle = (near + far) / 2;
                (near, far) = Winner(assumption, middle) == best.Case.Name ? (middle, far) : (near, middle);
            }

            return far;
        }

        return null;
    }
}
