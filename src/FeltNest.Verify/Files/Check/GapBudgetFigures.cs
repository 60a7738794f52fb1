namespace FeltNest.Files.Check;

/// <summary>A budget of the seam gap: worst case, root sum square, shares and order of the tolerances, from what each part does.</summary>
internal static class GapBudgetFigures
{
    /// <summary>Checks the file.</summary>
    public static void Check(StatedFields top)
    {
        (double OfShare, double OfSquare) variance = top.Text("readAs") == "two-sigma" ? (1.0 / 4, 1.0 / 8) : (1.0 / 3, 4.0 / 45);
        double? balls = null;
        if (top.Inner("adhesive") is { } adhesive)
        {
            adhesive.Keep(adhesive.Number("leastMm") < adhesive.Number("mostMm"), "mostMm", "is not above leastMm");
            balls = top.Number("balls");
        }

        string?[] fields = [.. top.Items("sources").Select(source => source.Text("field"))];
        top.Keep(fields.Distinct().Count() == fields.Length, "sources", "hold a field twice");
        foreach (StatedFields source in top.Items("sources"))
        {
            source.Keep(source.Number("plusMinus") >= 0, "plusMinus", "is below 0");
        }

        State(top.Needed("atFitting"), fields, balls, variance);
        if (top.Inner("afterCure") is { } cured)
        {
            State(cured, fields, balls, variance);
        }
    }

    private static void State(
        StatedFields state, string?[] fields, double? counted, (double OfShare, double OfSquare) variance)
    {
        double[][] stations = [.. state.Rows("stations", 7)];
        Effect[] effects = [.. state.Items("effects").Select(Effect.Of)];
        state.Keep(
            effects.All(effect => fields.Contains(effect.Field) && effect.Minus.Length == stations.Length), "effects",
            "have a field that is no source, or other places than the stations");
        if (!effects.All(effect => effect.Minus.Length == stations.Length) || stations.Length == 0)
        {
            return;
        }

        double length = stations.Sum(s => s[2]);
        for (int i = 0; i < stations.Length; i++)
        {
            Station(state, stations, effects, i);
        }

        Extreme(state, "nominal", stations.Min(s => s[3]), stations.Max(s => s[3]));
        Extreme(state, "worst", stations.Min(s => s[4]), stations.Max(s => s[5]));
        Extreme(state, "root", stations.Min(s => s[3] - s[6]), stations.Max(s => s[3] + s[6]));
        Within(state, stations, length, counted);
        Spread(state.Needed("least"));
        Spread(state.Needed("most"));
        state.Keep(state.Needed("least").Number("meanMm") <= state.Needed("most").Number("meanMm"), "least", "is above most");
        SharesOf(state, stations, effects, length, variance);
    }

    private static void Station(StatedFields state, double[][] stations, Effect[] effects, int i)
    {
        double[] s = stations[i];
        double before = i == 0 ? 0 : stations[i - 1][1];
        double least = s[3] + effects.Sum(effect => effect.Worst(i, 1));
        double most = s[3] + effects.Sum(effect => effect.Worst(i, -1));
        double root = Math.Sqrt(effects.Sum(effect => effect.Slope(i) * effect.Slope(i)));
        double parameter = 2 * Math.PI * i / stations.Length;
        bool kept = Near(s[0], parameter) && (i == 0 ? s[1] == 0 : s[1] > before) && s[2] > 0 && Near(s[4], least) && Near(s[5], most)
            && Near(s[6], root);
        state.Keep(kept, "stations", FormattableString.Invariant($"hold at place {i} what the effects do not give"));
    }

    private static void Extreme(StatedFields state, string name, double least, double most)
    {
        state.Same($"{name}LeastMm", least, Shares.Room(least));
        state.Same($"{name}MostMm", most, Shares.Room(most));
    }

    private static void Within(StatedFields state, double[][] stations, double length, double? counted)
    {
        bool hasRange = counted is not null;
        double[][] within = [.. state.Rows("within", 2)];
        state.Keep(within.Length == (hasRange ? stations.Length : 0), "within", "has to stand there exactly where a range does");
        if (!hasRange || within.Length != stations.Length)
        {
            state.Keep(state.Optional("ballsWithinPercent") is null == !hasRange, "ballsWithinPercent", "stands without a range");
            return;
        }

        double seam = within.Zip(stations, (w, s) => w[1] * s[2]).Sum() / length;
        state.Same("seamWithinPercent", seam, Shares.Room(seam));
        double balls = state.Number("ballsWithinPercent");
        state.Keep(
            balls >= 0 && balls <= within.Min(w => w[1]) + Shares.Room(100), "ballsWithinPercent",
            "is more than lie within at the worst place");
        double count = balls * counted!.Value / 100;
        state.Keep(Near(Math.Round(count), count), "ballsWithinPercent", "is no whole number of the balls counted");
        state.Keep(within.Select((w, i) => w[0] == i && w[1] is >= 0 and <= 100).All(kept => kept), "within", "are no shares in order");
    }

    private static void Spread(StatedFields spread)
    {
        string[] order = ["low1Mm", "low5Mm", "middleMm", "high5Mm", "high1Mm"];
        for (int i = 1; i < order.Length; i++)
        {
            spread.Keep(spread.Number(order[i]) >= spread.Number(order[i - 1]), order[i], $"is below {order[i - 1]}");
        }

        spread.Keep(spread.Number("deviationMm") >= 0, "deviationMm", "is below 0");
    }

    private static void SharesOf(
        StatedFields state, double[][] stations, Effect[] effects, double length, (double OfShare, double OfSquare) variance)
    {
        double[] variances = [.. effects.Select(effect => stations.Select((s, i) =>
            s[2] * ((effect.Slope(i) * effect.Slope(i) * variance.OfShare) + (effect.Bend(i) * effect.Bend(i) * variance.OfSquare)))
            .Sum() / length)];
        double whole = variances.Sum();
        IReadOnlyList<StatedFields> shares = state.Items("shares");
        for (int i = 0; i < shares.Count; i++)
        {
            StatedFields share = shares[i];
            string? field = share.Text("field");
            int[] mine = [.. Enumerable.Range(0, effects.Length).Where(k => effects[k].Field == field)];
            share.Keep(mine.Length > 0, "field", "has no effects");
            double percent = whole > 0 ? 100 * mine.Sum(k => variances[k]) / whole : 0;
            double greatest = mine.Select(k => effects[k].Greatest).DefaultIfEmpty().Max();
            double bend = mine.Select(k => effects[k].GreatestBend).DefaultIfEmpty().Max();
            share.Same("rank", i + 1, 0);
            share.Same("variancePercent", percent, Shares.Room(percent));
            share.Same("greatestMm", greatest, Shares.Room(greatest));
            share.Same("bendMm", bend, Shares.Room(bend));
            share.Keep(
                share.Optional("gainPercent") is null == share.Optional("gainErrorPercent") is null
                    && (share.Optional("gainErrorPercent") ?? 0) >= 0, "gainErrorPercent", "is no error of a gain");
            if (i > 0)
            {
                (double, double) before = (shares[i - 1].Optional("gainPercent") ?? 0, shares[i - 1].Number("variancePercent"));
                share.Keep(
                    (share.Optional("gainPercent") ?? 0, share.Number("variancePercent")).CompareTo(before) <= 0, "rank",
                    "stands below a tolerance that wins less");
            }
        }

        double sum = shares.Sum(share => share.Number("variancePercent"));
        state.Keep(Near(sum, whole > 0 ? 100 : 0), "shares", FormattableString.Invariant($"add to {sum:0.####} % of the variance"));
    }

    private static bool Near(double a, double b) => Math.Abs(a - b) <= Shares.Room(b);

    // What one part does at each place.
    private sealed record Effect
    {
        public required string? Field { get; init; }

        public required double[] Minus { get; init; }

        public required double[] Plus { get; init; }

        public double Greatest => Minus.Concat(Plus).Select(Math.Abs).DefaultIfEmpty().Max();

        public double GreatestBend => Enumerable.Range(0, Minus.Length).Select(i => Math.Abs(Bend(i))).DefaultIfEmpty().Max();

        public static Effect Of(StatedFields effect)
        {
            IReadOnlyList<double[]> ends = effect.Rows("ends", 2);
            return new Effect
            {
                Field = effect.Text("field"),
                Minus = [.. ends.Select(end => end[0])],
                Plus = [.. ends.Select(end => end[1])],
            };
        }

        public double Slope(int i) => (Plus[i] - Minus[i]) / 2;

        public double Bend(int i) => (Plus[i] + Minus[i]) / 2;

        // The least change, or with side -1 the greatest, of the parabola through both ends and the middle.
        public double Worst(int i, double side)
        {
            double least = Math.Min(side * Minus[i], side * Plus[i]);
            double bend = side * Bend(i);
            double vertex = -side * Slope(i) / (2 * bend);
            bool inside = bend > 0 && Math.Abs(vertex) < 1;
            return side * (inside ? -bend * vertex * vertex : least);
        }
    }
}
