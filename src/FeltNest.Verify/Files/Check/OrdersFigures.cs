using System.Globalization;
using static FeltNest.InvariantText;

namespace FeltNest.Files.Check;

/// <summary>A plan of orders: money line by line, felt, times in words, days, rolls and dies, each from the other fields of the
/// file.</summary>
/// <remarks>What rules a plan must keep is another check (<c>Rolls/Orders/Check</c>). Reasons and who pushed whom are not looked at: they
/// are found by a search.</remarks>
internal sealed class OrdersFigures
{
    // A coin's fraction lost in written digits.
    private const double Coin = 1e-4;

    // Times are written to the minute.
    private const double HalfMinute = 0.5 + 1e-6;
    private const double SlackMm = 1e-6;
    private static readonly string[] Added = ["felt", "strikes", "dies", "changeOvers", "overtime"];
    private static readonly string[] OfRoll = ["felt", "lot"];
    private readonly StatedFields top;
    private readonly StatedFields question;
    private readonly StatedFields rules;
    private readonly Dictionary<string, StatedFields> orders;
    private readonly Dictionary<string, StatedFields> rolls;
    private readonly Dictionary<string, StatedFields> offers;
    private readonly Dictionary<string, StatedFields> rack;
    private readonly Dictionary<string, StatedFields> presses;
    private readonly IReadOnlyList<StatedFields> cuts;
    private readonly DateOnly start;

    private OrdersFigures(StatedFields top, StatedFields question)
    {
        (this.top, this.question) = (top, question);
        rules = question.Needed("rules");
        start = Read(rules, "start") ?? default;
        orders = Named("orders", "order");
        rolls = Named("stock", "roll");
        offers = Named("offers", "roll");
        rack = Named("rack", "die");
        presses = Named("presses", "press");
        cuts = top.Items("assignments");
    }

    /// <summary>Checks the file, whose names were read already.</summary>
    /// <param name="top">The file.</param>
    /// <param name="question">The same file; what is read of it, the question, does not count as checked.</param>
    public static void Check(StatedFields top, StatedFields question)
    {
        OrdersFigures figures = new(top, question);
        figures.Cuts();
        figures.Purchases();
        figures.Dies();
        figures.Orders();
        figures.Remnants();
        figures.Overtime();
        figures.Costs();
    }

    private Dictionary<string, StatedFields> Named(string list, string name) =>
        question.Items(list).DistinctBy(item => item.Text(name)).ToDictionary(item => item.Text(name) ?? string.Empty);

    private void Cuts()
    {
        // Tickets of a book are numbered on from the plan before.
        double first = cuts.Count > 0 ? Math.Max(1, Math.Round(cuts[0].Number("number"))) : 1;
        for (int i = 0; i < cuts.Count; i++)
        {
            StatedFields cut = cuts[i];
            cut.Same("number", first + i, 0);
            StatedFields die = rack[cut.Text("die")!];
            double strikes = cut.Number("strikes");
            double feed = die.Number("feedMm");
            cut.Same("metres", ((feed * (strikes - 1)) + die.Number("lengthMm") + die.Number("gapMm")) / 1000, SlackMm);
            Moment(cut, "start", cut.Number("startHour"));
            double end = cut.Number("endHour");
            Moment(cut, "end", end);

            // Midnight belongs to the day it ends.
            Day(cut, "day", start.AddDays((int)Math.Floor((end - 1e-7) / 24)));
            Also(cut, die, strikes);
        }
    }

    // Whole balls of the second part: of each group whole pairs, by the good share that the ordered balls go by.
    private void Also(StatedFields cut, StatedFields die, double strikes)
    {
        IReadOnlyList<StatedFields> groups = die.OptionalItems("alsoClasses");
        if (groups.Count == 0)
        {
            cut.Keep(cut.Optional("alsoBalls") is null, "alsoBalls", "is stated, its die has no second part");
            return;
        }

        StatedFields? roll = rolls.GetValueOrDefault(cut.Text("roll")!);
        StatedFields? measured = roll?.Items("measured").FirstOrDefault(m => m.Text("die") == cut.Text("die"));
        double faults = measured is null
            ? (roll ?? Bought(cut.Text("roll")!)).Number("faultPercent") / 100
            : 1 - measured.Number("goodShare");
        double good = (1 - faults) * (1 - (rules.Number("rejectPercent") / 100)) * (1 - (rules.Number("unpairedPercent") / 100));
        cut.Same("alsoBalls", groups.Sum(g => Math.Floor((g.Number("panels") * strikes * good / 2) + 1e-9)), 0);
    }

    // A bought roll is named by its offer and a number.
    private StatedFields Bought(string roll) => offers.First(o => roll.StartsWith($"{o.Key} #", StringComparison.Ordinal)).Value;

    // Written to the minute as 2026-03-02T06:35.
    private void Moment(StatedFields item, string field, double hour)
    {
        string[] parts = (item.Text(field) ?? string.Empty).Split('T');
        bool read = TimeOnly.TryParseExact(
            parts[^1], "HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out TimeOnly time) & OfText(parts[0]) is { };
        double minutes = read ? (1440.0 * (OfText(parts[0])!.Value.DayNumber - start.DayNumber)) + time.ToTimeSpan().TotalMinutes : 0;
        item.Keep(
            read && Math.Abs(minutes - (60 * hour)) <= HalfMinute, field,
            Invariant($"says {item.Text(field)}, {hour:0.####} h from 00:00 of the first day were found"));
    }

    private static void Day(StatedFields item, string field, DateOnly day) => item.Keep(
        OfText(item.Text(field)) == day, field, Invariant($"says {item.Text(field)}, {day:yyyy-MM-dd} was found"));

    private static DateOnly? Read(StatedFields item, string field) => OfText(item.Text(field));

    private static DateOnly? OfText(string? text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : null;

    private void Purchases()
    {
        foreach (StatedFields bought in top.Items("purchases"))
        {
            StatedFields offer = offers[bought.Text("offer")!];
            double metres = bought.Number("rolls") * offer.Number("lengthM");
            bought.Same("metres", metres, SlackMm);
            bought.Same("price", metres * offer.Number("pricePerMetre"), Coin);
        }
    }

    private void Dies()
    {
        IReadOnlyList<StatedFields> mountings = top.Items("mountings");
        foreach (StatedFields work in top.Items("dies"))
        {
            string name = work.Text("die")!;
            StatedFields die = rack[name];
            string first = mountings.Where(m => m.Text("die") == name).MinBy(m => m.Number("startHour"))?.Text("press") ?? string.Empty;
            work.Keep(work.Text("press") == first, "press", $"says {work.Text("press")}, its first mounting is on {first}");
            double? price = die.Optional("makePrice");
            double life = die.Number("lifeStrikes");
            double strikes = work.Number("strikes");
            double ready = die.Number("strikesLeft") + (price is null ? 0 : life);
            double rulings = strikes > ready && life > 0 ? Math.Ceiling((strikes - ready) / life) : 0;
            work.Same("make", price is not null);
            work.Same("reRules", rulings, 0);
            work.Same("price", (price ?? 0) + (rulings * die.Number("reRulePrice")), Coin);
            work.Same("strikesAfter", ready + (rulings * life) - strikes, 0);
        }
    }

    private void Orders()
    {
        foreach (StatedFields item in top.Items("late"))
        {
            StatedFields order = orders[item.Text("order")!];
            DateOnly due = Read(order, "due") ?? default;
            Day(item, "due", due);
            DateOnly until = order.Inner("pins") is { } pins && Read(pins, "day") is { } pinned && pinned < due ? pinned : due;
            Day(item, "done", until.AddDays((int)item.Number("days")));
            item.Same("priority", order.Number("priority"), 0);
        }

        double lacking = top.Items("shortfalls").Sum(item => item.Number("balls"));
        double least = top.Needed("search").Number("leastShortBalls");
        top.Needed("search").Keep(
            least <= lacking + 1e-6, "leastShortBalls", Invariant($"says {least:0.###}, this plan is {lacking:0} short"));
    }

    private void Remnants()
    {
        foreach (StatedFields kept in top.Items("remnants"))
        {
            string name = kept.Text("roll")!;
            StatedFields roll = rolls.GetValueOrDefault(name) ?? Bought(name);
            foreach (string field in OfRoll)
            {
                kept.Keep(kept.Text(field) == roll.Text(field), field, $"says {kept.Text(field)}, the roll says {roll.Text(field)}");
            }

            kept.Same("widthMm", roll.Number("widthMm"), SlackMm);
            double? age = start.DayNumber - Read(roll, "received")?.DayNumber;
            kept.Same("ageDays", age, 0);
        }
    }

    private void Overtime()
    {
        foreach (StatedFields over in top.Items("overtime"))
        {
            StatedFields? span = presses[over.Text("press")!].Inner("calendar")?.Items("overtime")
                .FirstOrDefault(s => s.Text("from") == over.Text("from"));
            over.Same("price", over.Number("hours") * span?.Number("pricePerHour"), Coin);
        }
    }

    // The parts of the cost from their own lines, and the parts to the whole.
    private void Costs()
    {
        StatedFields costs = top.Needed("costs");
        IReadOnlyList<StatedFields> purchases = top.Items("purchases");
        IReadOnlyList<StatedFields> dies = top.Items("dies");
        double begun = cuts.Select(c => c.Text("roll")!).Distinct().Where(rolls.ContainsKey)
            .Sum(name => rolls[name].Number("pricePerMetre") * rolls[name].Number("lengthM"));
        double felt = begun + purchases.Sum(p => p.Number("price"));
        double kept = top.Items("remnants").Where(r => r.Flag("begun") || !rolls.ContainsKey(r.Text("roll")!)).Sum(Worth);
        double mounting = top.Items("mountings").Where(m => m.Flag("paid"))
            .Sum(m => presses[m.Text("press")!].Number("changeOverMinutes") * rules.Number("hourRate") / 60);
        costs.Same("felt", felt, Coin * Math.Max(1, purchases.Count));
        costs.Same("keptValue", kept, Coin);
        costs.Same("strikes", cuts.Sum(c => c.Number("strikes")) * rules.Number("perStrike"), Coin);
        costs.Same("dies", dies.Sum(d => d.Number("price")), Coin * Math.Max(1, dies.Count));
        costs.Same("changeOvers", mounting, Coin);
        costs.Same("overtime", top.Items("overtime").Sum(o => o.Number("price")), Coin);
        double parts = Added.Sum(costs.Number) - costs.Number("keptValue");
        top.Same("cost", parts, Coin);
    }

    private double Worth(StatedFields kept)
    {
        string name = kept.Text("roll")!;
        StatedFields roll = rolls.GetValueOrDefault(name) ?? Bought(name);
        return kept.Number("lengthM") * roll.Number("pricePerMetre") * rules.Number("remnantValuePercent") / 100;
    }
}
