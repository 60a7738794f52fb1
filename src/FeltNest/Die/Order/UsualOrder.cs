using FeltNest.Layout;

namespace FeltNest.Die.Order;

/// <summary>The order for a die where the shop has written none: figures that are common in the trade (common practice, no source), each to
/// be confirmed.</summary>
internal static class UsualOrder
{
    /// <summary>What is assumed, in one sentence.</summary>
    public const string Words = "no order file: rule, board, ejection, tolerances and force are usual figures, assumed: confirm each";

    /// <summary>The order for a layout.</summary>
    public static DieOrder Of(RollLayout layout) => new()
    {
        Name = "die",
        Rule = new DieRule
        {
            ThicknessMm = 0.71,
            HeightMm = 23.8,
            Bevel = RuleBevel.SideWaste,
            Hardness = "as the toolmaker advises",
            LeastBendMm = 1.5,
        },
        Board = Board,
        Ejection = new DieEjection { Material = "as the toolmaker advises", RoomMm = 2.4, ClearMm = 0.5 },
        Tolerances = new DieTolerances { EdgeProfileMm = 0.5, PositionMm = 0.4, PanelProfileMm = 1.2, General = "m" },
        Force = Force,
        FeltThicknessMm = 3.2,
        Plies = 1,
        CommonCut = layout.GapMm == 0,
        DieView = false,
        ThirdAngle = false,
        Title = new DieTitle { Title = "Gang die", DocumentType = "Die drawing", Language = "en" },
        Wishes = new DieWishes { Quantity = 1 },
        IsAssumed = true,
    };

    private static DieBoard Board => new()
    {
        Material = "plywood",
        ThicknessMm = 18,
        LandMm = 20,
        DensityKgPerM3 = 680,
        BridgeEveryMm = 95,
        BridgeMm = 6,
    };

    private static ForceFigures Force => new()
    {
        NPerMmPerPly = 20,
        Basis = ForceBasis.Placeholder,
        EjectionPercent = 15,
        ReservePercent = 25,
        CloseMm = 6.35,
    };
}
