using FeltNest.Cost.Compare;
using FeltNest.Files.Workbooks;

namespace FeltNest.Files.Compare.Workbook;

/// <summary>The sheet in front: offers in the order of the list with their rank, and beside it in the order of the ranks.</summary>
internal static class RankingSheet
{
    private const int First = 6;

    // Long because it fills the sheet cell by cell in the order of its columns.
    /// <summary>The sheet.</summary>
    public static WorkbookSheet Of(Comparison comparison, LineSheet offers, LineSheet account, LineSheet cost)
    {
        bool priced = comparison.HasCosts;
        string ranked = priced ? "C" : "B";
        int last = First + comparison.Rows.Count - 1;
        WorkbookSheet sheet = new("ranking") { ColumnWidths = [26, 14, 14, 8, 14, 4, 8, 26, 14], Kept = (1, First - 1) };
        sheet.Put(1, 1, WorkbookCell.Text($"{comparison.Question.Lay.Part.Name}: a thousand good balls", CellLook.Heading));
        sheet.Put(
            2, 1,
            WorkbookCell.Text(
                "Every figure is a formula from the sheets 'shop' and 'offers'. The layouts are those that were taken: changed prices may "
                    + "ask for others, which feltnest compare finds."));
        string currency = comparison.Best.Sheet?.Currency ?? "no price";
        string[] heads =
        [
            "name", "felt, m2", $"total, {currency}", "rank", "above the best", string.Empty, "rank", "name", "above the best",
        ];
        foreach ((string head, int i) in heads.Select((head, i) => (head, i)).Where(h => h.head.Length > 0))
        {
            sheet.Put(First - 1, i + 1, WorkbookCell.Text(head, CellLook.Heading));
        }

        for (int i = 0; i < comparison.Rows.Count; i++)
        {
            int row = First + i;
            CellLook look = priced ? CellLook.Money : CellLook.Quantity;
            string all = $"${ranked}${First}:${ranked}${last}";
            sheet.Put(row, 1, WorkbookCell.Formula(offers.At("name", i)));
            sheet.Put(row, 2, WorkbookCell.Formula(account.At("m2", i), CellLook.Quantity));
            if (comparison.Rows[i].Sheet is not null)
            {
                sheet.Put(row, 3, WorkbookCell.Formula(cost.At("line19", i), CellLook.Total));
            }

            // Of two that are equal the first in the list goes first.
            string before = $"COUNTIF(${ranked}${First}:{ranked}{row},{ranked}{row})-1";
            sheet.Put(row, 4, WorkbookCell.Formula($"RANK({ranked}{row},{all},1)+{before}"));
            sheet.Put(row, 5, WorkbookCell.Formula($"{ranked}{row}-MIN({all})", look));
            string found = $"MATCH(G{row},$D${First}:$D${last},0)";
            sheet.Put(row, 7, WorkbookCell.Formula($"ROW()-{First - 1}"));
            sheet.Put(row, 8, WorkbookCell.Formula($"INDEX($A${First}:$A${last},{found})"));
            sheet.Put(row, 9, WorkbookCell.Formula($"INDEX($E${First}:$E${last},{found})", look));
        }

        return sheet;
    }
}
