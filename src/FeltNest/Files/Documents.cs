using FeltNest.Files.Balls;
using FeltNest.Files.Compare;
using FeltNest.Files.Costs;
using FeltNest.Files.Dies;
using FeltNest.Files.Families;
using FeltNest.Files.Felts;
using FeltNest.Files.Fields;
using FeltNest.Files.Layouts;
using FeltNest.Files.Offers;
using FeltNest.Files.Orders;
using FeltNest.Files.Outlines;
using FeltNest.Files.Panels;
using FeltNest.Files.Presses;
using FeltNest.Files.Rolls;
using FeltNest.Files.Scan;
using FeltNest.Files.Studies;
using FeltNest.Files.Trials;
using FeltNest.Files.Usage;

namespace FeltNest.Files;

/// <summary>Every document and every list that the program reads or writes.</summary>
internal static class Documents
{
    /// <summary>The JSON documents.</summary>
    public static IReadOnlyList<Document> All { get; } =
    [
        BallDocument.Document, FeltDocument.Document, LotDocument.Document, OutlineDocument.Document, PanelDocument.Document,
        LayoutDocument.Document, SeamsDocument.Document, SeamDesignDocument.Document, ProvenDocument.Document, WrapDocument.Document,
        TraceDocument.Document, TrialDocument.Document, GapBudgetDocument.Document,
        WaistDocument.Document, CostsDocument.Document, PressDocument.Document,
        CompareDocument.Document, FamilyDocument.Document, UsageDocument.Document, PeriodDocument.Document,
        RollDocument.Document, RollPlanDocument.Document,
        DieOrderDocument.Document, DieQuoteDocument.Document,
        DieDocument.Document, FirstArticleDocument.Document, MadeDieDocument.Document, DieLifeDocument.Document, OrderPlanDocument.Document,
        CheckDocument.Document,
    ];

    /// <summary>The CSV lists that are read.</summary>
    public static IReadOnlyList<Listing> Lists { get; } =
    [
        OffersListing.Listing, FamilyListing.Listing, ActualsListing.Listing, OrdersListing.Listing, StockListing.Listing,
        DiesListing.Listing,
        CalendarListing.Listing, DoneListing.Listing,
        ReadingsListing.Listing, RingsListing.Listing, TrialListing.Listing, FeltReadingsListing.Listing, PointsListing.Listing,
        BendTestsListing.Listing,
    ];

    /// <summary>The list whose columns a line names, or null: what was given where something else is wanted.</summary>
    public static Listing? ListOf(IReadOnlyList<string> columns) => Lists.FirstOrDefault(list =>
        list.Required.Count > 2 && list.Required.All(name => columns.Any(column => column.Trim().Trim('"') == name)));

    /// <summary>The CSV lists that are written.</summary>
    public static IReadOnlyList<Listing> Results { get; } =
    [
        GapBudgetListing.Columns.Listing, SeamsListing.Columns.Listing, SeamDesignListing.Columns.Listing, WaistListing.Columns.Listing,
        CompareListing.Columns.Listing, FamilyColumns.Columns.Listing,
        UsageListing.Columns.Listing, PeriodListing.Columns.Listing,
        StrikesListing.Columns.Listing, WorkListing.Columns.Listing, StockAfterListing.Columns.Listing,
        DiesAfterListing.Columns.Listing, OrdersAfterListing.Columns.Listing,
        RuleListing.Columns.Listing, RuleStockListing.Columns.Listing,
    ];
}
