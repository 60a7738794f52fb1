using FeltNest.Cost.Compare;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Files.Json;
using FeltNest.Files.Studies;
using FeltNest.Layout.Limits;

namespace FeltNest.Files.Compare;

/// <summary>Writes a comparison as JSON (schema feltnest/compare/1).</summary>
public static class CompareWriter
{
    /// <summary>The file's bytes.</summary>
    public static byte[] Json(Comparison comparison)
    {
        CompareQuestion question = comparison.Question;
        using JsonOutput json = new();
        json.Text("schema", SchemaName.Compare)
            .Text("part", question.Lay.Part.Name)
            .Text("costs", question.Costs?.Name)
            .ObjectOrNull(
                "dieLife", question.Costs?.Die,
                (
                    item,
                    die) => item
                        .Number("strikes", die.LifeStrikes)
                        .Text("basis", die.LifeOf is null ? "costs" : "readings")
                        .Text("die", die.LifeOf))
            .Text("method", question.Scan ? "parallel rows from one set of tables" : "searched by all ways")
            .Object("lay", fields => RollFields.Rules(fields, question.Lay))
            .Flag("cutShort", comparison.CutShort)
            .Text("best", comparison.Best.Case.Name)
            .Objects("rows", comparison.Rows, WriteRow)
            .Objects("unanswered", comparison.Unanswered, (item, none) => item.Text("name", none.Name).Text("reason", none.Reason))
            .Text("die", comparison.Die is null ? null : question.Kept is null ? $"of {comparison.Best.Case.Name}" : "kept")
            .Objects("dropWidths", comparison.DropWidths, (item, drop) => item
                .Number("rows", drop.Rows).Number("leastWidthMm", drop.LeastWidthMm).Number("panelsPerMetre", drop.PanelsPerMetre))
            .Objects("crossovers", comparison.Crossovers, (item, at) => item
                .Number("widthMm", at.WidthMm).Number("rowsBelow", at.RowsBelow).Number("rowsAbove", at.RowsAbove))
            .Objects("breakEvens", comparison.BreakEvens, (item, even) => item
                .Text("offer", even.Offer)
                .Text("against", even.Against)
                .Number("price", Money(even.Price.Amount))
                .Text("priceUnit", PriceUnits.WordOf(even.Price.Unit))
                .Text("currency", even.Price.Currency))
            .Objects("values", comparison.Values, (item, value) => item
                .Text("change", value.Change)
                .Number("squareMetresPerMillionBalls", value.SquareMetresPerMillionBalls)
                .Number("costPerMillionBalls", Money(value.MoneyPerMillionBalls)))
            .Objects("flips", comparison.Flips, (item, flip) => item
                .Text("assumption", flip.Assumption)
                .Number("now", flip.Now)
                .Number("at", flip.At)
                .Text("best", flip.Best)
                .Flag("stated", flip.IsStated))
            .Objects("swings", comparison.Swings, (item, swing) => item
                .Text("assumption", swing.Assumption)
                .Number("low", swing.Low)
                .Number("likely", swing.Likely)
                .Number("high", swing.High)
                .Number("costAtLow", Money(swing.TotalAtLow))
                .Number("costAtHigh", Money(swing.TotalAtHigh))
                .Text("bestAtLow", swing.BestAtLow)
                .Text("bestAtHigh", swing.BestAtHigh))
            .Objects("gang", comparison.Gang, (item, choice) => item
                .Number("cavities", choice.Cavities)
                .Number("plies", choice.Plies)
                .Number("panelsPerStrike", choice.PanelsPerStrike)
                .Number("strikesPerThousandBalls", choice.StrikesPerThousandBalls)
                .Number("diePrice", Money(choice.DiePrice))
                .Number("runningCostPerThousandBalls", Money(choice.RunningCost))
                .Number("costPerThousandBalls", Money(choice.Total))
                .Number("paysFromThousandBalls", Money(choice.PaysFromThousandBalls)))
            .Objects(
                "sweep", comparison.Sweep,
                (
                    item,
                    point) => item.Number("widthMm", point.WidthMm).Number("rows", point.Rows).Number("wastePercent", point.WastePercent));
        return json.Finish();
    }

    private static void WriteRow(JsonOutput json, CompareRow row)
    {
        (FeltAccount felt, FeltOffer? offer, EdgeTrims trims) = (row.Account, row.Case.Offer, row.Case.Trims);
        json.Text("name", row.Case.Name)
            .Number("rank", row.Rank)
            .Text("felt", offer?.Felt)
            .Text("lot", offer?.Lot)
            .Number("widthMm", row.Case.WidthMm)
            .Number("edgeMm", trims.LowerMm)
            .Number("upperEdgeMm", trims.UpperMm)
            .Number("panelsPerMetre", row.Yield.PanelsPerMetre)
            .Number("ballsPerMetre", row.Yield.BallsPerMetre)
            .Number("wastePercent", row.Yield.WastePercent)
            .Object("perThousandBalls", use => use
                .Number("metres", felt.PerThousandBalls.Metres)
                .Number("squareMetres", felt.PerThousandBalls.SquareMetres)
                .Number("kilograms", felt.PerThousandBalls.Kilograms)
                .Number("netSquareMetres", felt.NetSquareMetres)
                .Number("strikes", felt.StrikesPerThousandBalls))
            .Text("massBasis", offer?.MassBasis)
            .Object("account", account => Account(account, felt.Shares))
            .Object("roll", roll => roll
                .Number("lengthM", felt.RollLengthM)
                .Number("repeats", felt.Repeats)
                .Number("remnantMm", felt.RemnantMm)
                .Number("balls", felt.RollLengthM is null ? null : felt.Balls)
                .Number("minimumThousandBalls", offer?.MinimumM / felt.PerThousandBalls.Metres))
            .Number("costPerThousandBalls", Money(row.Total))
            .Text("currency", row.Sheet?.Currency)
            .Objects("costSheet", row.Sheet?.Lines ?? [], (item, line) => item
                .Number("line", line.Number)
                .Text("name", line.Name)
                .Number("quantity", line.Quantity)
                .Text("unit", line.Unit)
                .Number("amount", Money(line.Amount)))
            .Number("diePrice", Money(row.Sheet?.Die?.Price))
            .ObjectOrNull("nominal", row.Nominal, (item, wide) => item
                .Number("widthMm", wide.WidthMm)
                .Number("panelsPerMetre", wide.PanelsPerMetre)
                .Number("squareMetresPerThousandBalls", wide.SquareMetresPerThousandBalls)
                .Number("costPerThousandBalls", Money(wide.Total)))
            .ObjectOrNull("keptDie", row.Kept, (item, kept) => item
                .Number("rows", kept.Rows)
                .Number("panelsPerMetre", kept.PanelsPerMetre)
                .Number("squareMetresPerThousandBalls", kept.SquareMetresPerThousandBalls)
                .Number("costPerThousandBalls", Money(kept.Total))
                .Number("newDiePaysAfterThousandBalls", Money(kept.NewDiePaysAfterThousandBalls)))
            .ObjectOrNull("furtherDies", row.Further, (item, further) => item
                .Number("dies", further.Dies)
                .Number("oneDiePanelsPerMetre", further.OneDiePanelsPerMetre)
                .Number("oneDieCostPerThousandBalls", Money(further.OneDieTotal))
                .Number("payAfterThousandBalls", Money(further.PaysAfterThousandBalls)));
    }

    private static void Account(JsonOutput json, FeltShares s) => json
        .Number("goodPanelsPercent", s.Good)
        .Number("betweenPanelsPercent", s.BetweenPanels)
        .Number("unusedEdgePercent", s.UnusedEdge)
        .Number("edgeTrimPercent", s.EdgeTrim)
        .Number("rollEndsPercent", s.RollEnds)
        .Number("remnantPercent", s.Remnant)
        .Number("faultsPercent", s.Faults)
        .Number("rejectsPercent", s.Rejects)
        .Number("unpairedPercent", s.Unpaired);

    private static double? Money(decimal? value) => value is { } money ? (double)Math.Round(money, 6) : null;
}
