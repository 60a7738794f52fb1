using FeltNest.Cost.Compare;
using FeltNest.Files.Workbooks;

namespace FeltNest.Files.Compare.Workbook;

/// <summary>A comparison as a workbook of formulas, from the figures that were put in to the ranking. The layouts are those that were
/// taken: a figure that is changed by hand prices them again and lays nothing anew.</summary>
internal static class CompareWorkbook
{
    /// <summary>The file's bytes.</summary>
    public static byte[] Xlsx(Comparison comparison)
    {
        LineSheet shop = ShopLines.Of(comparison.Question);
        LineSheet offers = OfferLines.Of(comparison, shop);
        LineSheet account = AccountLines.Of(comparison, shop, offers);
        LineSheet cost = CostLines.Of(comparison, shop, offers, account);
        WorkbookSheet ranking = RankingSheet.Of(comparison, offers, account, cost);
        return WorkbookWriter.Write([ranking, shop.Sheet, offers.Sheet, account.Sheet, cost.Sheet]);
    }
}
