using FeltNest.Ball;
using FeltNest.Layout;
using FeltNest.Panel;

namespace FeltNest.Page.Work;

/// <summary>A ball as the page asks for it, with its flat panel.</summary>
/// <param name="Ball">The ball, waist and edge limit as asked.</param>
/// <param name="Flat">Its panel.</param>
/// <param name="Part">The panel as a part to lay.</param>
internal sealed record PagePanel(BallSpec Ball, FlatPanel Flat, LayoutPart Part);
