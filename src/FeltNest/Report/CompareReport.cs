using System.Globalization;
using System.Text;
using FeltNest.Cost.Compare;
using FeltNest.Cost.Compare.Findings;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>The tables a comparison prints, at most 80 columns wide.</summary>
internal static class CompareReport
{
    /// <summary>Most rows shown on the terminal: the files hold all.</summary>
    public const int MostRows = 20;

    /// <summary>The text, lines ending in a line feed.</summary>
    public static string Text(Comparison comparison)
    {
        StringBuilder text = new();
        Ranking(text, comparison);
        CompareRow best = comparison.Best;
        TextTable table = new();
        table.Heading($"{best.Case.Name}: where the felt goes (per cent of the roll)");
        foreach ((string name, double percent) in best.Account.Shares.Named)
        {
            table.Line(name, percent, "0.00", "%");
        }

        if (best.Sheet is { } sheet)
        {
            Sheet(table, best, sheet);
        }

        Findings(table, comparison);
        return text.Append('\n').Append(table).ToString();
    }

    /// <summary>Everything but the ranking, the felt account and the cost sheet.</summary>
    public static void Findings(IFindings table, Comparison comparison)
    {
        if (comparison.Best.Sheet is not null && comparison.Question.Costs?.Die is { } die)
        {
            table.Line(
                "life of the die", die.LifeStrikes.ToString(CultureInfo.InvariantCulture),
                die.LifeOf is { } read ? $"strikes, by the readings of {read}" : "strikes, of the costs file");
        }

        CompareFronts.Add(table, comparison);
        Offers(table, comparison);
        CompareOutlook.Add(table, comparison);
        CompareRisks.Add(table, comparison);
        CompareWidths.Add(table, comparison);
    }

    private static void Ranking(StringBuilder text, Comparison comparison)
    {
        string money = comparison.Best.Sheet?.Currency ?? string.Empty;
        string head = string.Create(
            CultureInfo.InvariantCulture,
            $"{Short(comparison.Question.Lay.Part.Name, 40)}: felt bought per thousand good balls, gap "
                + $"{comparison.Question.Lay.GapMm:0.###} mm");
        text.Append(head).Append('\n').Append('-', head.Length).Append('\n');
        text.Append("    name                 width     cuts  waste        felt per 1000      cost\n");
        text.Append($"                            mm    per m      %       m      m2      kg{Short(money, 8),10}\n");
        foreach (CompareRow row in comparison.Ranking.Take(MostRows))
        {
            text.Append(string.Create(
                CultureInfo.InvariantCulture,
                $"{row.Rank,3} {Short(row.Case.Name, 18),-18}{row.Case.WidthMm,8:0.##}{row.Yield.PanelsPerMetre,9:0.00}"
                    + $"{row.Yield.WastePercent,7:0.00}{row.Account.PerThousandBalls.Metres,8:0.00}"
                    + $"{row.Account.PerThousandBalls.SquareMetres,8:0.00}{row.Account.PerThousandBalls.Kilograms,8:0.00}"
                    + $"{row.Total,10:0.00}").TrimEnd());
            text.Append('\n');
        }

        TextTable notes = new();
        RankingNotes(notes, comparison);
        text.Append(notes);
    }

    /// <summary>What must be known to read the ranking.</summary>
    public static void RankingNotes(IFindings notes, Comparison comparison)
    {
        if (comparison.Rows.Count > MostRows)
        {
            notes.Note($"The best {MostRows} of {comparison.Rows.Count}; the files hold all.");
        }

        notes.Note(
            $"Ranked by {(comparison.HasCosts ? "cost" : "square metres")}. Waste: per cent of the full width, one repeat, before ends "
                + $"and faults. {Basis(comparison)}");
        foreach ((string name, string reason) in comparison.Unanswered)
        {
            notes.Note($"{name} has no layout: {reason}.");
        }

        if (comparison.Question.Scan)
        {
            notes.Note("Parallel rows, a die designed anew for each width; A list of widths searches each by all ways.");
        }

        if (comparison.CutShort)
        {
            notes.Note("Cut short: what was not reached is missing.");
        }
    }

    private static string Basis(Comparison comparison)
    {
        FeltLosses? losses = comparison.Question.Costs?.Losses;
        string felt =
            comparison.Best.Case.Offer is { } ? "Planned on the guaranteed width; an offer's own length and faults count. " : string.Empty;
        return felt + (losses is null
            ? "No costs file: roll ends, rejects and panels without a partner are not counted, faults only where an offer states them."
            : string.Create(
                CultureInfo.InvariantCulture,
                $"Counted: {losses.EndLossMm:0.#} mm at each roll end, rejects {losses.RejectPercent:0.##} %, unpaired "
                    + $"{losses.UnpairedPercent:0.##} %."));
    }

    private static void Sheet(TextTable table, CompareRow best, CostSheet sheet)
    {
        table.Heading($"{best.Case.Name}: cost sheet, thousand good balls, {sheet.Currency}");
        foreach (CostLine line in sheet.Lines.Take(10).Concat(sheet.FeltParts).Concat(sheet.Lines.Take(19).Skip(10)))
        {
            string quantity =
                line.Quantity is { } value ? value.ToString("0.000", CultureInfo.InvariantCulture) + " " + line.Unit : string.Empty;
            string name = line.Number < 20 ? $"{line.Number,2} {line.Name}" : $"     {line.Name}";
            if (line.Number <= 9)
            {
                table.Line(name, quantity);
            }
            else
            {
                table.Line(name, line.Amount is { } money ? money.ToString("0.00", CultureInfo.InvariantCulture) : "not given", quantity);
            }
        }

        table.Line("   per ball", (sheet.Total / 1000).ToString("0.00000", CultureInfo.InvariantCulture));
        if (sheet.NotCounted.Count > 0)
        {
            table.Note($"Not in the total, as no figure was given: {string.Join(", ", sheet.NotCounted)}.");
        }
    }

    private static void Offers(IFindings table, Comparison comparison)
    {
        BreakEvens(table, comparison);
        NominalWidths(table, comparison);
        Purchases(table, comparison);
        foreach (CompareRow row in comparison.Ranking.Where(r => r.Case.Offer is { MinimumM: > 0 } && r.Sheet?.Purchase is null))
        {
            double balls = row.Case.Offer!.MinimumM!.Value / row.Account.PerThousandBalls.Metres;
            table.Note(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{row.Case.Name} is sold from {row.Case.Offer.MinimumM:0.#} m: {balls:0.0} thousand balls."));
        }

        foreach (CompareRow row in comparison.Ranking.Where(r =>
            r.Case.Offer is not null && r.Account.PerThousandBalls.Kilograms is not null))
        {
            table.Note(
                $"{row.Case.Name}: kilograms of {row.Case.Offer!.MassBasis ?? "felt, the offer does not say whether bare or coated"}"
                    + $"{(row.Case.Offer.MassBasis is null ? string.Empty : " felt")}.");
        }
    }

    private static void Purchases(IFindings table, Comparison comparison)
    {
        foreach (CompareRow row in comparison.Ranking.Where(r => r.Sheet?.Purchase is not null))
        {
            FeltBought bought = row.Sheet!.Purchase!;
            string rolls = bought.Rolls is { } count ? Invariant($"{count:0.###} rolls, ") : string.Empty;
            string days =
                row.Case.Offer is { DeliveryDays: > 0 } late ? Invariant($"; there after {late.DeliveryDays} days") : string.Empty;
            table.Note(Invariant(
                $"{row.Case.Name}: {bought.ThousandBalls:0.###} thousand balls need {bought.NeededM:0.0} m; bought {rolls}"
                    + $"{bought.BoughtM:0.0} m "
                    + $"at {row.Sheet.Price.Amount:0.00##} {row.Sheet.Price.Currency}/{PriceUnits.WordOf(row.Sheet.Price.Unit)}, "
                    + $"{bought.SurplusM:0.0} m left over{days}."));
        }

        if (comparison.Rows.Any(r => r.Sheet?.Purchase is { SurplusM: > 0 }) && comparison.Question.Costs?.SurplusWorthPercent is null)
        {
            table.Note("Felt left over counts as lost: surplusWorthPercent of the costs file says what it is worth.");
        }

        if (comparison.Rows.Any(r => r.Case.Offer is { CreditDays: > 0 }) && comparison.Question.Costs?.InterestPercent is null)
        {
            table.Note("Days of credit are not counted: interestPercent of the costs file says what they are worth.");
        }

        if (comparison.Rows.Any(r => r.Case.Offer?.MassBasis == "bare") && comparison.Rows.Any(r => r.Case.Offer?.MassBasis == "coated")
            && comparison.Question.Costs?.CoatingPerSquareMetre is null)
        {
            table.Note(
                "Bare and coated felt do not compare as they stand: coating.pricePerM2 of the costs file says what the coating of bare "
                    + "felt "
                    + "costs.");
        }
    }

    // The price at which another offer costs as much as the best one, and the best one as much as the next.
    private static void BreakEvens(IFindings table, Comparison comparison)
    {
        CompareRow best = comparison.Best;
        if (best.Case.Offer is null)
        {
            return;
        }

        table.Heading("Offers against each other");
        foreach (BreakEven even in comparison.BreakEvens.Where(e =>
            e.Against == best.Case.Name || (e.Offer == best.Case.Name && comparison.Ranking[1].Case.Name == e.Against)))
        {
            FeltPrice now = comparison.Rows.First(r => r.Case.Name == even.Offer).Sheet!.Price;
            string words = even.Price.Amount > 0
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $"equals {even.Against} at {even.Price.Amount:0.00##} {now.Currency}/{PriceUnits.WordOf(now.Unit)} (now "
                        + $"{now.Amount:0.00##})")
                : $"would not equal {even.Against} even as a gift";
            table.Note($"{even.Offer} {words}.");
        }
    }

    // What an offer would give if its nominal width could be planned on.
    private static void NominalWidths(IFindings table, Comparison comparison)
    {
        foreach (CompareRow row in comparison.Ranking.Where(r => r.Nominal is not null))
        {
            NominalWidth wide = row.Nominal!;
            double felt = wide.SquareMetresPerThousandBalls - row.Account.PerThousandBalls.SquareMetres;
            table.Note(string.Create(
                CultureInfo.InvariantCulture,
                $"{row.Case.Name} at its nominal {wide.WidthMm:0.##} mm: {wide.PanelsPerMetre:0.00} panels per metre, {Signed(felt)} m2"
                    + $"{(wide.Total - row.Total is { } money ? $", {Signed((double)money)} {row.Sheet!.Currency}" : string.Empty)} per "
                    + $"thousand balls."));
        }
    }

    /// <summary>A difference with its sign, two decimals.</summary>
    public static string Signed(double value) => value.ToString("+0.00;-0.00;0.00", CultureInfo.InvariantCulture);

    private static string Short(string text, int most) => text.Length <= most ? text : text[..(most - 2)] + "..";
}
