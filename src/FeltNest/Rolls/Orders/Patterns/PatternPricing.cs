namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>Finds the patterns that are worth most at given prices, for all kinds of roll of a lot that the same dies cut alike.</summary>
/// <remarks>
/// A knapsack by dynamic programming over the length (P. Gilmore and R. Gomory, Operations Research 14 (1966) 1045-1074, from memory): a
/// strike takes its feed, a piece has its least strikes and what they reach beyond it. One table to the longest roll serves every length.
/// What goes back to stock is in the price: a roll of which something goes back pays for each metre cut, one that is cut to its end pays
/// for all of it. Lengths are counted in steps of <see cref="StepM"/> and rounded down, so no pattern is worth more than the table says.
/// </remarks>
internal sealed class PatternPricing
{
    // About how long a step of the table is, m.
    private const double UsualStepM = 0.001;

    // Lengths this near are equal, m.
    private const double Slack = 1e-9;

    // Values this near are equal.
    private const double Same = 1e-7;
    private const byte First = 1;
    private const byte Strike = 2;
    private const byte Piece = 3;
    private readonly OrderRequest question;
    private readonly IReadOnlyList<FeltKind> kinds;
    private readonly double costShare;
    private readonly double[] feed;
    private readonly double[] over;
    private readonly int[] least;
    private readonly int[] feedSteps;
    private readonly int[] pieceSteps;
    private readonly int steps;
    private double[] best = [];
    private byte[][] choices = [];
    private bool[][] opened = [];

    /// <summary>A pricing of kinds that the same dies cut with the same shares.</summary>
    /// <param name="question">The question.</param>
    /// <param name="kinds">The kinds.</param>
    /// <param name="costShare">1 where money counts, 0 where balls short alone do: felt is free then.</param>
    public PatternPricing(OrderRequest question, IReadOnlyList<FeltKind> kinds, double costShare)
    {
        (this.question, this.kinds, this.costShare) = (question, kinds, costShare);
        StrikeShape[] shapes = [.. kinds[0].Dies.Select(d => question.Dies[d.Die].Shape)];
        feed = [.. shapes.Select(s => s.FeedMm / 1000)];
        over = [.. shapes.Select(s => s.OverMm / 1000)];
        double longest = kinds.Max(k => k.ClearM);
        StepM = LengthStep.Of(feed, longest, up: false, UsualStepM);
        steps = 1 + (int)Math.Floor((longest / StepM) + Slack);
        feedSteps = [.. feed.Select(Steps)];
        least = [.. kinds[0].Dies.Select(d => question.Orders
            .Where(o => question.Fits(o, kinds[0].Roll, question.Dies[d.Die]))
            .Min(o => question.LeastStrikes(o, kinds[0].Roll, question.Dies[d.Die])))];
        pieceSteps = [.. over.Select((o, i) => Steps(o + (least[i] * feed[i])))];
    }

    /// <summary>Step of the table, m.</summary>
    public double StepM { get; }

    /// <summary>For each kind the pattern of least cost less value, null where none is worth its cost, and the least such difference that
    /// any pattern can have.</summary>
    public (RollPattern? Pattern, double Reduced)[] Best(PatternValues values, IReadOnlyList<double> rollPrices)
    {
        Fill(values);
        Dictionary<double, int[]> keeping = [];
        (RollPattern? Pattern, double Reduced)[] found = new (RollPattern?, double)[kinds.Count];
        for (int k = 0; k < kinds.Count; k++)
        {
            FeltKind kind = kinds[k];
            int end = Math.Min(steps - 1, Steps(kind.ClearM));
            int at = end;
            double gain = best[end] - (costShare * kind.WholeCost);
            if (kind.KeepingM > 0)
            {
                double metre = costShare * kind.MetreCost;
                int[] tops = keeping.TryGetValue(metre, out int[]? known) ? known : keeping[metre] = Tops(metre);
                int top = tops[Math.Min(steps - 1, Steps(kind.KeepingM))];
                double kept = best[top] - (top * StepM * metre) - (costShare * kind.BeginCost);
                (at, gain) = kept > gain ? (top, kept) : (at, gain);
            }

            gain -= rollPrices[k];
            found[k] = gain > Same ? (Traced(kind, at), -gain) : (null, 0);
        }

        return found;
    }

    /// <summary>A pattern with its cost.</summary>
    public RollPattern Made(FeltKind kind, int[] strikes, int[] pieces)
    {
        double cut = Length(strikes, pieces);
        double felt = cut <= kind.KeepingM + Slack ? Math.Min(kind.BeginCost + (cut * kind.MetreCost), kind.WholeCost) : kind.WholeCost;
        return new RollPattern
        {
            Kind = kind,
            Strikes = strikes,
            Pieces = pieces,
            CutM = cut,
            Cost = felt + (strikes.Sum() * (double)question.Rules.PerStrike),
        };
    }

    private int Steps(double metres) => LengthStep.Count(metres, StepM, up: false);

    private double Length(int[] strikes, int[] pieces)
    {
        double cut = 0;
        for (int i = 0; i < feed.Length; i++)
        {
            cut += (strikes[i] * feed[i]) + (pieces[i] * over[i]);
        }

        return cut;
    }

    // The most that is gained in each length, die after die.
    private void Fill(PatternValues values)
    {
        best = best.Length == steps ? best : new double[steps];
        Array.Clear(best);
        if (choices.Length == 0)
        {
            choices = [.. feed.Select(_ => new byte[steps])];
            opened = [.. feed.Select(_ => new bool[steps])];
        }

        double[] running = new double[steps];
        for (int die = 0; die < feed.Length; die++)
        {
            Open(die, values.Strike[die], Math.Max(0, values.Piece[die]), running);
        }
    }

    private void Open(int die, double strike, double piece, double[] running)
    {
        (int feedStep, int begin, byte[] choice, bool[] open) = (feedSteps[die], pieceSteps[die], choices[die], opened[die]);
        double paid = (least[die] * strike) + piece;
        for (int c = 0; c < steps; c++)
        {
            double value = double.NegativeInfinity;
            byte how = 0;
            if (c >= begin)
            {
                (value, how) = (best[c - begin] + paid, First);
                double longer = c >= feedStep ? running[c - feedStep] + strike : double.NegativeInfinity;
                (value, how) = longer > value ? (longer, Strike) : (value, how);
                double again = running[c - begin] + paid;
                (value, how) = again > value ? (again, Piece) : (value, how);
            }

            running[c] = value;
            choice[c] = how;
        }

        for (int c = begin; c < steps; c++)
        {
            open[c] = running[c] > best[c];
            best[c] = open[c] ? running[c] : best[c];
        }

        Array.Clear(open, 0, Math.Min(begin, steps));
    }

    // For each length the shorter one at which most is gained where each metre costs so much.
    private int[] Tops(double metreCost)
    {
        int[] tops = new int[steps];
        double most = double.NegativeInfinity;
        int top = 0;
        for (int c = 0; c < steps; c++)
        {
            double gain = best[c] - (c * StepM * metreCost);
            (most, top) = gain > most ? (gain, c) : (most, top);
            tops[c] = top;
        }

        return tops;
    }

    // The pattern of a length; strikes that only rounding made room for are left out.
    private RollPattern Traced(FeltKind kind, int at)
    {
        int[] strikes = new int[feed.Length];
        int[] pieces = new int[feed.Length];
        for (int die = feed.Length - 1; die >= 0; die--)
        {
            if (!opened[die][at])
            {
                continue;
            }

            byte how;
            do
            {
                how = choices[die][at];
                strikes[die] += how == Strike ? 1 : least[die];
                pieces[die] += how == Strike ? 0 : 1;
                at -= how == Strike ? feedSteps[die] : pieceSteps[die];
            }
            while (how != First);
        }

        double room = kind.ClearM + Slack;
        while (Length(strikes, pieces) > room)
        {
            int longest = Enumerable.Range(0, feed.Length).MaxBy(i => strikes[i]);
            strikes[longest]--;
            pieces[longest] = Math.Min(pieces[longest], strikes[longest]);
        }

        return Made(kind, strikes, pieces);
    }
}
