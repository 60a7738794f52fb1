using System.Globalization;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Layout.Scan;
using FeltNest.Yield;

namespace FeltNest.Cost.Usage;

/// <summary>Splits the difference between felt used and standard into its causes.</summary>
/// <remarks>Felt is a product of factors (metres by ends, faults, rejects and so on). Each cause's part is the logarithm of its factor's
/// change times the logarithmic mean of both quantities: the parts add to the whole without a remainder and do not depend on an order.
/// Follows B. W. Ang, "The LMDI approach to decomposition analysis: a practical guide", Energy Policy 33 (2005) 867-871 (from memory). The
/// price is split off as cost accountants do (standard costing, common practice): quantities at the standard price, the price's difference
/// on the felt really used.</remarks>
internal sealed class UsageStudy
{
    private readonly UsageRequest question;
    private readonly LayPlan plan;
    private readonly FeltPrice? price;
    private readonly double? massGsm;

    private UsageStudy(UsageRequest question)
    {
        this.question = question;
        plan = LayPlan.Of(question.Layout);
        price = question.Costs?.Felt;
        massGsm = question.Costs?.MassPerAreaGsm ?? question.Layout.Parts[0].MassPerAreaGsm;
    }

    private PriceUnit Unit => price?.Unit ?? PriceUnit.SquareMetre;

    /// <summary>Splits a difference.</summary>
    /// <exception cref="InputException">No pair of good panels in all, more metres lost at the ends than drawn, a roll narrower than any
    /// row, a layout of two parts, a currency without a rate, a price by the kilogram without a mass, a price recorded without a standard
    /// one.</exception>
    public static UsageVariance Run(UsageRequest question) => new UsageStudy(question).Run();

    // Long because each figure follows from the ones before it, down to the record that holds them all.
    private UsageVariance Run()
    {
        Require();
        IReadOnlyList<ActualRoll> rolls = question.Rolls;
        FeltAccount account = FeltAccount.Of(plan, question.Costs?.Losses ?? FeltLosses.None, massGsm);
        UsageFactors standard = Standard(account);
        UsageFactors actual = Actual(rolls, standard);
        double balls = rolls.Sum(r => (double)r.GoodPanels) * actual.Pairs / 2;
        FeltUsage allowed = Times(account.PerThousandBalls, balls / 1000);
        FeltUsage used = Used(rolls);
        double from = FeltPrice.QuantityOf(Unit, allowed);
        double to = FeltPrice.QuantityOf(Unit, used);
        double mean = LogMean(to, from);
        decimal? rate = price is null ? null : price.Amount * question.Costs!.RateOf(price.Currency);
        decimal? allowedCost = Kept(rate * (decimal)from);
        decimal? paid = Kept(Paid(rolls) ?? rate * (decimal)to);
        UsagePart[] parts = [.. Enum.GetValues<UsageCause>().Select(Part)];
        return new UsageVariance
        {
            Question = question,
            Balls = balls,
            Unit = Unit,
            Standard = allowed,
            Actual = used,
            StandardCost = allowedCost,
            ActualCost = paid,
            Currency = price is null ? null : question.Costs!.Currency,
            Parts = Closed(parts, paid - allowedCost),
            NotRecorded = [.. NotRecorded(rolls[0])],
            Rolls = [.. rolls.Select(roll => Roll(roll, standard, account))],
        };

        UsagePart Part(UsageCause cause)
        {
            double more = cause == UsageCause.Price ? 0 : mean * (actual.LogOf(cause) - standard.LogOf(cause));
            decimal? money = cause == UsageCause.Price ? paid - (rate * (decimal)to) : rate * (decimal)more;
            return new UsagePart
            {
                Cause = cause,
                Quantity = more,
                Percent = 100 * more / from,
                Money = Kept(money),
                Standard = standard.LostPercent(cause),
                Actual = actual.LostPercent(cause),
            };
        }
    }

    private void Require()
    {
        bool byKilogram = Unit == PriceUnit.Kilogram || question.Rolls.Any(roll => roll.Price?.Unit == PriceUnit.Kilogram);
        if (byKilogram && question.Costs?.MassPerAreaGsm is null)
        {
            throw new InputException(
                question.CostsFile ?? question.ActualsFile, "felt.massPerAreaGsm",
                "is missing in the costs file, and felt is priced per kg: give the mass of the felt as it is bought, coated or bare");
        }

        if (question.Layout.Parts.Count > 1)
        {
            throw new InputException(
                question.LayoutFile, "panels",
                "the layout holds two parts: which of them a good panel was cannot be told; use a layout of one part");
        }

        foreach (ActualRoll roll in question.Rolls)
        {
            RequireRoll(roll);
        }

        if (question.Rolls.Sum(r => r.GoodPanels - (r.UnpairedPanels ?? 0)) < 2)
        {
            throw new InputException(
                question.ActualsFile, "goodPanels", "all rolls together hold no pair of good panels: there is no ball to count felt for");
        }
    }

    private void RequireRoll(ActualRoll roll)
    {
        if (roll.EndsM >= roll.Metres)
        {
            throw new InputException(
                question.ActualsFile, "endsM",
                FormattableString.Invariant(
                    $"roll {roll.Roll}: {roll.EndsM} m lost at its ends of {roll.Metres} m drawn leave nothing to cut"));
        }

        if (RowsOf(roll) == 0)
        {
            throw new InputException(
                question.ActualsFile, "widthMm",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"roll {roll.Roll}: no row of the layout fits {roll.WidthMm} mm and its edge trims, so nothing can have been "
                        + $"cut from it"));
        }

        if (roll.UnpairedPanels > roll.GoodPanels)
        {
            throw new InputException(
                question.ActualsFile, "unpairedPanels",
                $"roll {roll.Roll}: {roll.UnpairedPanels} of {roll.GoodPanels} good panels: panels without a partner are among the good "
                    + $"ones");
        }

        if (roll.Price is not null && price is null)
        {
            throw new InputException(
                question.ActualsFile, "price",
                $"roll {roll.Roll} has a price and no standard price is known: give a costs file with felt.price");
        }
    }

    private UsageFactors Standard(FeltAccount account)
    {
        FeltLosses losses = question.Costs?.Losses ?? FeltLosses.None;
        double ends = account.PanelsCut / (plan.PanelsPerMetre * (account.RollLengthM ?? 1));
        return new UsageFactors
        {
            AreaPerMetre = 1,
            Rows = 1,
            Lay = 1,
            Ends = ends,
            Faults = 1 - (losses.FaultPercent / 100),
            Rejects = 1 - (losses.RejectPercent / 100),
            Pairs = 1 - (losses.UnpairedPercent / 100),
        };
    }

    private UsageFactors Actual(IReadOnlyList<ActualRoll> rolls, UsageFactors standard)
    {
        double metres = rolls.Sum(r => r.Metres);
        double good = rolls.Sum(r => (double)r.GoodPanels);
        double Clear(ActualRoll roll) => roll.EndsM is { } ends ? roll.Metres - ends : roll.Metres * standard.Ends;
        double clear = rolls.Sum(Clear);
        double rows = rolls.Sum(r => Clear(r) * RowsOf(r)) / clear;
        double pairs = Share(rolls, r => r.UnpairedPanels, good, among: true) ?? standard.Pairs;
        double rejects = Share(rolls, r => r.RejectedPanels, good, among: false) ?? standard.Rejects;
        double passed = good / rejects;
        double faults = Share(rolls, r => r.FaultPanels, passed, among: false) ?? standard.Faults;
        double cut = passed / faults;
        double width = Unit == PriceUnit.Metre ? 1 : Used(rolls).SquareMetres / metres / (plan.RollWidthMm / 1000);
        return new UsageFactors
        {
            AreaPerMetre = width,
            Rows = rows,
            Lay = cut / (clear * plan.PanelsPerMetre * rows),
            Ends = clear / metres,
            Faults = faults,
            Rejects = rejects,
            Pairs = pairs,
        };
    }

    // The share that is not lost of a count; null where it was not recorded.
    private static double? Share(IReadOnlyList<ActualRoll> rolls, Func<ActualRoll, int?> lost, double count, bool among)
    {
        if (lost(rolls[0]) is null)
        {
            return null;
        }

        if (among)
        {
            return (count - rolls.Sum(r => lost(r)!.Value)) / count;
        }

        return count / (count + rolls.Sum(r => lost(r)!.Value));
    }

    private double RowsOf(ActualRoll roll) =>
        roll.WidthMm is { } width ? KeptDie.PanelsPerMetreAt(question.Layout, width) / plan.PanelsPerMetre : 1;

    private FeltUsage Used(IEnumerable<ActualRoll> rolls)
    {
        double metres = 0;
        double squareMetres = 0;
        foreach (ActualRoll roll in rolls)
        {
            metres += roll.Metres;
            squareMetres += roll.Metres * (roll.WidthMm ?? plan.RollWidthMm) / 1000;
        }

        return new FeltUsage
        {
            Metres = metres,
            SquareMetres = squareMetres,
            Kilograms = squareMetres * massGsm / 1000,
        };
    }

    private decimal? Paid(IReadOnlyList<ActualRoll> rolls) => rolls[0].Price is null
        ? null : rolls.Sum(r =>
            (decimal)FeltPrice.QuantityOf(r.Price!.Unit, Used([r])) * r.Price.Amount * question.Costs!.RateOf(r.Price.Currency));

    private UsageRoll Roll(ActualRoll roll, UsageFactors standard, FeltAccount account)
    {
        double balls = roll.UnpairedPanels is { } alone ? (roll.GoodPanels - alone) / 2.0 : roll.GoodPanels * standard.Pairs / 2;
        FeltUsage used = Used([roll]);
        double allowed = FeltPrice.QuantityOf(Unit, account.PerThousandBalls) * balls / 1000;
        return new UsageRoll
        {
            Actual = roll,
            Balls = balls,
            RowsPercent = 100 * RowsOf(roll),
            PerThousandBalls = Times(used, 1000 / balls),
            MorePercent = 100 * ((FeltPrice.QuantityOf(Unit, used) / allowed) - 1),
        };
    }

    private static IEnumerable<UsageCause> NotRecorded(ActualRoll roll)
    {
        (UsageCause Cause, object? Value)[] recorded =
        [
            (UsageCause.Width, roll.WidthMm), (UsageCause.RollEnds, roll.EndsM), (UsageCause.Faults, roll.FaultPanels),
            (UsageCause.Rejects, roll.RejectedPanels),
            (UsageCause.Unpaired, roll.UnpairedPanels), (UsageCause.Price, roll.Price),
        ];
        return recorded.Where(r => r.Value is null).Select(r => r.Cause);
    }

    // Digits of money that are kept, so few that sums of it are exact.
    private static decimal? Kept(decimal? money) => money is { } amount ? Math.Round(amount, 10) : null;

    // What rounding loses goes to the lay's part, so that the parts add to the whole to the digit.
    private static UsagePart[] Closed(UsagePart[] parts, decimal? whole) =>
        [.. parts.Select(p => p.Cause == UsageCause.Lay ? p with { Money = p.Money + (whole - parts.Sum(q => q.Money)) } : p)];

    private static double LogMean(double a, double b) => Math.Abs(a - b) < 1e-12 * b ? b : (a - b) / Math.Log(a / b);

    private static FeltUsage Times(FeltUsage felt, double factor) =>
        new()
        {
            Metres = felt.Metres * factor,
            SquareMetres = felt.SquareMetres * factor,
            Kilograms = felt.Kilograms * factor,
        };
}
