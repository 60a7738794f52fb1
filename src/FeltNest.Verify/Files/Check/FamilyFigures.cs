namespace FeltNest.Files.Check;

/// <summary>A family of balls: costs of every ball on every width, whole dies, plans that add up, and that none is better.</summary>
internal static class FamilyFigures
{
    // Half a cent: amounts of a year are whole cents.
    private const double Cent = 0.005;

    // Half of the last digit written of an amount for a thousand balls.
    private const double Digit = 5e-7;

    /// <summary>Checks the file.</summary>
    public static void Check(StatedFields top)
    {
        IReadOnlyList<StatedFields> balls = top.Items("balls");
        IReadOnlyList<StatedFields> widths = top.Items("widths");
        string[] ballNames = [.. balls.Select(ball => ball.Text("name") ?? string.Empty)];
        string[] widthNames = [.. widths.Select(width => width.Text("name") ?? string.Empty)];
        Dictionary<(int Ball, int Width), StatedFields> pairs = [];
        foreach (StatedFields pair in top.Items("pairs"))
        {
            (int Ball, int Width) place = (Array.IndexOf(ballNames, pair.Text("ball")), Array.IndexOf(widthNames, pair.Text("width")));
            pair.Keep(place is { Ball: >= 0, Width: >= 0 }, "ball", "or its width is not in the lists");
            pair.Keep(pairs.TryAdd(place, pair), "ball", "stands with this width twice");
            if (place.Ball >= 0)
            {
                Pair(top, pair, balls[place.Ball].Number("ballsPerYear"));
            }
        }

        int none = top.Items("unanswered").Count;
        top.Keep(
            pairs.Count + none == balls.Count * widths.Count, "pairs",
            $"and unanswered are {pairs.Count + none}, not every ball on every width");
        Plans(top, pairs, ballNames, widthNames);
        Differences(top, pairs, widthNames);
    }

    // Whole dies and rules, and the money of a year.
    private static void Pair(StatedFields top, StatedFields pair, double ballsPerYear)
    {
        double thousands = ballsPerYear / 1000;
        pair.Same(
            "runningPerYear", pair.Number("runningPerThousandBalls") * thousands, Cent + (Digit * thousands) + 1e-6);
        double dieYear = 0;
        if (top.Inner("die") is { } die)
        {
            double years = top.Number("horizonYears");
            double strikes = pair.Number("strikesPerThousandBalls") * thousands * years;
            double rules = Math.Max(1, Math.Ceiling((strikes / die.Number("lifeStrikes")) - 1e-9));
            double dies = Math.Ceiling(rules / (1 + die.Number("reRules")));
            pair.Same("dies", dies, 0);
            pair.Same("reRules", rules - dies, 0);
            double money = (dies * pair.Number("diePrice")) + ((rules - dies) * die.Number("reRulePrice"));
            dieYear = money / years * (1 + (top.Number("overheadPercent") / 100));
        }

        pair.Same("diesPerYear", dieYear, Cent + 1e-6);
        pair.Same("costPerYear", pair.Number("runningPerYear") + pair.Number("diesPerYear"), 1e-4);
    }

    private static void Plans(
        StatedFields top, Dictionary<(int Ball, int Width), StatedFields> pairs, string[] ballNames, string[] widthNames)
    {
        long?[][] costs =
        [
            .. ballNames.Select((_, ball) => widthNames.Select((_, width) =>
                pairs.TryGetValue((ball, width), out StatedFields? pair) ? Cents(pair.Number("costPerYear")) : (long?)null).ToArray()),
        ];
        StockCount count = new(Cents(top.Optional("widthYearCost") ?? 0), costs);
        IReadOnlyList<StatedFields> plans = top.Items("plans");
        int? before = 0;
        double? last = null;
        foreach (StatedFields plan in plans)
        {
            int? most = (int?)plan.Optional("mostWidths");
            plan.Keep(before is not null && (most ?? int.MaxValue) > before, "mostWidths", "is not greater than that of the plan before");
            for (int left = (before ?? 0) + 1; left < most; left++)
            {
                plan.Keep(count.Least(left) is null, "mostWidths", $"leaves out {left}, with which every ball can be cut");
            }

            Plan(top, plan, pairs, ballNames, widthNames);
            double cost = plan.Number("costPerYear");
            plan.Same("saves", last - cost, 1e-4);
            plan.Same("proved", Cents(plan.Number("bound")) == Cents(cost));
            plan.Keep(plan.Number("bound") <= cost + Cent, "bound", "is above the cost");
            if (plan.Flag("proved") && count.CanCount(most))
            {
                plan.Same("costPerYear", count.Least(most) / 100.0, Cent);
            }

            (before, last) = (most, cost);
        }

        top.Keep(plans.Count > 0 && before is null, "plans", "do not end with that of any number of widths");
    }

    // Every ball on one width, sums, and no more widths than allowed.
    private static void Plan(
        StatedFields top, StatedFields plan, Dictionary<(int Ball, int Width), StatedFields> pairs, string[] ballNames, string[] widthNames)
    {
        IReadOnlyList<StatedFields> takes = plan.Items("takes");
        plan.Keep(
            takes.Select(take => take.Text("ball")).SequenceEqual(ballNames), "takes",
            "do not hold every ball once, in the order of the list");
        List<StatedFields> taken = [];
        HashSet<int> stocked = [];
        foreach (StatedFields take in takes)
        {
            int width = Array.IndexOf(widthNames, take.Text("width"));
            bool known = pairs.TryGetValue((Array.IndexOf(ballNames, take.Text("ball")), width), out StatedFields? pair);
            take.Keep(known, "width", "is none on which the ball has a layout");
            if (known)
            {
                take.Same("costPerYear", pair!.Number("costPerYear"), 1e-6);
                taken.Add(pair);
                stocked.Add(width);
            }
        }

        plan.Same("widths", stocked.Count, 0);
        plan.Keep(!(plan.Optional("mostWidths") < stocked.Count), "widths", "is more than was allowed");
        plan.Same("stock", stocked.Count * Math.Round(top.Optional("widthYearCost") ?? 0, 2), 1e-4);
        plan.Same("running", taken.Sum(pair => pair.Number("runningPerYear")), 1e-4);
        plan.Same("dies", taken.Sum(pair => pair.Number("diesPerYear")), 1e-4);
        plan.Same("costPerYear", plan.Number("running") + plan.Number("dies") + plan.Number("stock"), 1e-4);
    }

    private static void Differences(
        StatedFields top, Dictionary<(int Ball, int Width), StatedFields> pairs, string[] widthNames)
    {
        int both = pairs.Keys.Count(place => place.Ball == 0 && pairs.ContainsKey((1, place.Width)));
        int wanted = top.Items("balls").Count == 2 ? both : 0;
        IReadOnlyList<StatedFields> differences = top.Items("differences");
        top.Keep(differences.Count == wanted, "differences", $"are {differences.Count} where {wanted} widths take both balls");
        foreach (StatedFields two in differences)
        {
            int width = Array.IndexOf(widthNames, two.Text("width"));
            bool known = pairs.TryGetValue((0, width), out StatedFields? first) & pairs.TryGetValue((1, width), out StatedFields? second);
            two.Keep(known, "width", "does not take both balls");
            foreach (string field in (string[])["squareMetresPerThousandBalls", "strikesPerThousandBalls", "runningPerThousandBalls"])
            {
                double? found = known ? second!.Number(field) - first!.Number(field) : null;
                two.Same(field, found, 1e-5);
            }
        }
    }

    private static long Cents(double money) => (long)Math.Round(100 * money);
}
