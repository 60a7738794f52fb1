using FeltNest.Files.Check;
using FeltNest.Files.Dies;
using FeltNest.Files.Layouts;
using FeltNest.Files.Rolls;
using FeltNest.Rolls.Orders.Check;

namespace FeltNest.Files;

/// <summary>A file to be verified, as read.</summary>
/// <param name="File">The file as it states itself.</param>
/// <param name="Layout">Its layout, or null for a plan of orders and for results that hold no layout.</param>
/// <param name="Plan">The roll plan the layout is part of, or null.</param>
/// <param name="Die">The die the layout is part of, or null.</param>
/// <param name="Orders">The plan of orders, or null.</param>
internal sealed record CheckedInput(
    StatedFile File, LayoutInput? Layout, RollPlanInput? Plan, DieInput? Die, StatedOrders? Orders);
