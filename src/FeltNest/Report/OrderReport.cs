using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Planned;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>What a plan of orders prints.</summary>
internal static class OrderReport
{
    // Longest list printed; all is in the files.
    private const int MostLines = 24;

    private const string AsLittleShort = " as little short";

    /// <summary>The text, lines ending in a line feed.</summary>
    public static string Text(OrderPlan plan)
    {
        TextTable table = new();
        if (SearchWords.BadlyShort(plan) is { } badly)
        {
            table.Note(badly);
        }

        Whole(table, plan);
        Cost(table, plan);
        Work(table, plan);
        if (Turned(plan) is { } turned)
        {
            table.Note(turned);
        }

        Purchases(table, plan);
        Dies(table, plan);
        Remnants(table, plan);
        table.Heading("What this rests on").Note(RestsOn(plan.Question));
        return table.ToString();
    }

    private static void Whole(TextTable table, OrderPlan plan)
    {
        string currency = plan.Question.Rules.Currency;
        long wanted = plan.Question.Orders.Sum(o => (long)o.Balls);
        string rolls = CountWords.Of(plan.Question.Rolls.Count, "roll");
        string begun = CountWords.Of(plan.Begun.Count, "roll");
        table.Heading($"{CountWords.Of(plan.Question.Orders.Count, "order")} against {rolls} in stock")
            .Line(
                "cost of the plan", Invariant($"{plan.Cost.Total:0.00} {currency}"),
                Invariant(
                    $"{begun} begun, {plan.Purchases.Sum(p => p.Rolls)} of all to be bought, {plan.Cuts.Sum(c => c.Metres):0.0} m cut"));
        if (plan.Bound is { } bound)
        {
            table.Line("no plan costs less than", Invariant($"{bound:0.00} {currency}"), SearchWords.Gap(plan.GapPercent!.Value));
        }

        table
            .Line("good balls", Invariant($"{plan.BallsServed}"), Invariant($"of {wanted} wanted"))
            .Line("balls short", Invariant($"{plan.ShortBalls}"), SearchWords.Proof(plan.ShortBalls, plan.Proof.LeastShort, string.Empty))
            .Line(
                "days late by priority", Invariant($"{plan.WeightedDaysLate}"),
                SearchWords.Proof(plan.WeightedDaysLate, plan.Proof.LeastWeightedDays, AsLittleShort))
            .Line("orders late", Invariant($"{plan.Late}"), SearchWords.Proof(plan.Late, plan.Proof.LeastLate, AsLittleShort));
        if (plan.Bound is null)
        {
            table.Line("least cost", "not proved", "no bound is known that says something");
        }

        if (SearchWords.CutShort(plan) is { } cut)
        {
            table.Note(Sentence(cut));
        }
    }

    private static void Cost(TextTable table, OrderPlan plan)
    {
        OrderRules rules = plan.Question.Rules;
        PlanCost cost = plan.Cost;
        table.Heading($"Where the cost is, {rules.Currency}")
            .Line("rolls begun and bought", Invariant($"{cost.Felt:0.00}"), "whole rolls at their price")
            .Line(
                "less felt kept", Invariant($"{-cost.KeptValue:0.00}"),
                Invariant($"remnants and spare rolls at {rules.RemnantValuePercent:0.##} % of their price"))
            .Line(
                "strikes", Invariant($"{cost.Strikes:0.00}"),
                Invariant($"{CountWords.Of(plan.Dies.Sum(d => d.Strikes), "strike")} at {rules.PerStrike:0.####}"))
            .Line("dies made or ruled again", Invariant($"{cost.Dies:0.00}"))
            .Line(
                "mounting dies", Invariant($"{cost.ChangeOvers:0.00}"),
                Invariant($"{CountWords.Of(plan.Mountings.Count(m => m.Paid), "mounting")} at {rules.HourRate:0.##} an hour"))
            .Line(
                "overtime", Invariant($"{cost.Overtime:0.00}"), Invariant($"{plan.Overtime.Sum(o => o.Hours):0.0} hours beyond the usual"));
    }

    /// <summary>Warnings, one line each: a search cut short, and what the shop must know.</summary>
    public static IEnumerable<string> Warnings(OrderPlan plan) =>
        SearchWords.CutShort(plan) is { } cut ? ForTheShop(plan).Prepend(cut) : ForTheShop(plan);

    /// <summary>What the shop must know, one line each, without a word of money: rolls that are not there yet, rolls to turn, orders short,
    /// orders late, reserves that cannot be kept.</summary>
    public static IEnumerable<string> ForTheShop(OrderPlan plan)
    {
        foreach (string line in SearchWords.Coming(plan))
        {
            yield return line;
        }

        if (Turned(plan) is { } turned)
        {
            yield return turned;
        }

        foreach (string line in Besides(plan))
        {
            yield return line;
        }

        foreach (OrderResult result in plan.Results)
        {
            if (result.ShortBalls > 0)
            {
                yield return $"order {result.Order.Name} is {result.ShortBalls} of {result.Order.Balls} balls short: {result.Reason}";
            }

            if (result.DaysLate > 0)
            {
                yield return Invariant(
                    $"order {result.Order.Name} is {CountWords.Of(result.DaysLate, "day")} late: due "
                        + $"{result.Order.Due:yyyy-MM-dd}, done {result.Done:yyyy-MM-dd}{Pushed(result)}");
            }

            if (result.ReserveShortBalls > 0)
            {
                yield return $"order {result.Order.Name}: felt for {result.ReserveShortBalls} of its {result.Order.ReserveBalls} balls "
                    + $"in reserve is not there in its lot";
            }
        }
    }

    // What layouts with a second part give besides.
    private static IEnumerable<string> Besides(OrderPlan plan) => plan.Cuts
        .Where(c => c.Die.Shape.AlsoBall is not null)
        .GroupBy(c => c.Die.Shape.AlsoBall!)
        .Select(also => $"{also.Sum(c => (long)c.AlsoBalls)} balls of {also.Key} come besides, cut by "
            + $"{string.Join(", ", also.Select(c => c.Die.Name).Distinct())}: they serve no order of this plan and their felt is paid "
            + $"by the "
            + $"orders; take them off the orders of {also.Key} before these are planned");

    private static void Work(TextTable table, OrderPlan plan)
    {
        table.Heading("Work list, press by press in the order of cutting")
            .Row(Invariant(
                $"{"no",3} {"press",-6} {"die",-8} {"order",-9} {"roll",-10} {"strikes",7} {"balls",6} {"start",-11} {"end",-11}"));
        foreach (OrderCut cut in plan.Cuts.Take(MostLines))
        {
            table.Row(Invariant(
                $"{cut.Number,3} {Cut(cut.Press.Name, 6),-6} {Cut(cut.Die.Name, 8),-8} {Cut(cut.Order.Name, 9),-9} "
                    + $"{Cut(cut.Roll.Name, 10),-10} {cut.Strikes,7} {cut.GoodBalls,6} "
                    + $"{plan.Question.Rules.MomentOf(cut.StartHour):MM-dd HH:mm} "
                    + $"{plan.Question.Rules.MomentOf(cut.EndHour):MM-dd HH:mm}"));
        }

        if (plan.Cuts.Count > MostLines)
        {
            table.Note($"... and {plan.Cuts.Count - MostLines} more: all are in orders.csv.");
        }
    }

    // Rolls of the plan that are turned, and what follows for what is left of them.
    private static string? Turned(OrderPlan plan)
    {
        string[] names = [.. plan.Cuts.Select(c => c.Roll).Where(roll => roll.Turned).Select(roll => roll.Name).Distinct()];
        return names.Length == 0
            ? null
            : $"TURN END FOR END before cutting: {string.Join(", ", names)}. The nap lies against the feed and the layout is one-way; "
                + $"metres of the plan count from what was the end. Measure what is left again: its file no longer fits it";
    }

    private static void Purchases(TextTable table, OrderPlan plan)
    {
        if (plan.Purchases.Count == 0)
        {
            return;
        }

        table.Heading("To buy");
        foreach (RollPurchase bought in plan.Purchases)
        {
            table.Line(
                Cut(bought.Offer.Roll.Name, 26), CountWords.Of(bought.Rolls, "roll"),
                Invariant($"{bought.Metres:0.##} m, {bought.Price:0.00} {plan.Question.Rules.Currency}"));
        }
    }

    private static void Dies(TextTable table, OrderPlan plan)
    {
        table.Heading("Dies");
        foreach (DieWork work in plan.Dies)
        {
            string first = work.Make ? "make it first; " : string.Empty;
            string ruled = work.ReRules > 0 ? $"rule it again {CountWords.Times(work.ReRules)}; " : string.Empty;
            table.Line(
                Cut(work.Die.Name, 26), CountWords.Of(work.Strikes, "strike"),
                Invariant($"{first}{ruled}mounted {CountWords.Times(work.Mountings)}, {work.StrikesAfter} left afterwards"));
        }
    }

    private static void Remnants(TextTable table, OrderPlan plan)
    {
        if (plan.Remnants.Count == 0)
        {
            return;
        }

        table.Heading("Back to stock");
        foreach (KeptRemnant kept in plan.Remnants.Take(MostLines))
        {
            table.Line(
                Cut(kept.Roll.Name, 26), Invariant($"{kept.LengthM:0.00} m"), RemnantWords(kept, plan.Question.Rules.Start));
        }

        if (plan.Remnants.Count > MostLines)
        {
            table.Note($"... and {plan.Remnants.Count - MostLines} more: all are in orders.json.");
        }
    }

    private static string RemnantWords(KeptRemnant kept, DateOnly start)
    {
        string age = kept.Roll.Received is { } day ? $", {CountWords.Of(start.DayNumber - day.DayNumber, "day")} old" : string.Empty;
        age = kept.Roll.Received > start ? Invariant($", arrives {kept.Roll.Received:yyyy-MM-dd}") : age;
        string begun = kept.Begun ? string.Empty : ", not begun";
        string pieces = string.Join(", ", kept.Reserved.Select(r => Invariant($"{r.Metres:0.00} m for {r.Order.Name}")));
        string held = kept.Reserved.Count > 0 ? $"; reserved: {pieces}" : string.Empty;
        return Invariant($"lot {kept.Roll.Lot}, {kept.Roll.WidthMm:0.#} mm{age}{begun}{held}");
    }

    /// <summary>What a plan takes for granted.</summary>
    internal static string RestsOn(OrderRequest question)
    {
        OrderRules rules = question.Rules;
        return Invariant(
            $"Cutting begins on {rules.Start:yyyy-MM-dd}. {CalendarWords(question)} Times are those of the clock on the wall, every day "
                + $"has "
                + $"24 hours. A press does one thing at a time, a die and a roll are in one place at a time; dies may be mounted again. "
                + $"Lost: {rules.EndLossMm:0.#} mm at each roll end, faults by roll, rejects {rules.RejectPercent:0.##} %, "
                + $"unpaired {rules.UnpairedPercent:0.##} %. Remnants below {rules.LeastRemnantM:0.##} m are waste; pieces below "
                + $"{rules.LeastCutM:0.##} m are not cut. Felt and dies are there from 00:00 of their day on.");
    }

    // Which presses have calendars of their own, and what the others run.
    private static string CalendarWords(OrderRequest question)
    {
        string[] own = [.. question.Presses.Where(p => p.Calendar is not null).Select(p => p.Name)];
        string usual = Invariant($"Monday to Friday, {question.Rules.HoursPerDay:0.##} h a day");
        string named = string.Join(", ", own);
        if (own.Length == 0)
        {
            return $"Presses run {usual}.";
        }

        return own.Length == question.Presses.Count
            ? $"Presses run by their calendars ({named})."
            : $"By a calendar: {named}; the other presses {usual}.";
    }

    // What pushes a late order aside.
    private static string Pushed(OrderResult result) => result.PushedBy.Count == 0
        ? string.Empty
        : "; sooner without " + string.Join(", ", result.PushedBy.Select(delay =>
            Invariant($"{delay.Rush.Name} of priority {delay.Rush.Priority} (by {CountWords.Of(delay.Days, "day")})")));

    private static string Sentence(string words) => $"{char.ToUpperInvariant(words[0])}{words[1..]}.";

    private static string Cut(string text, int width) => text.Length <= width ? text : text[..(width - 1)] + "~";
}
