using FeltNest.Die.Order;
using static FeltNest.InvariantText;

namespace FeltNest.Die.Board;

/// <summary>What is told with a board for the laser.</summary>
internal static class BoardWords
{
    /// <summary>The lines.</summary>
    public static IReadOnlyList<string> Of(DieDesign design, BoardCut cut)
    {
        DieOrder order = design.Request.Order;
        BoardLaser laser = order.Board.Laser!;
        double slot = laser.SlotMm ?? order.Rule.ThicknessMm;
        string revision = order.Title.Revision is { } r ? $" revision {r}" : string.Empty;
        return
        [
            Invariant($"{order.Name}{revision}: board, {order.Board.Material} {order.Board.ThicknessMm:0.##} mm, 1:1 in mm"),
            Invariant(
                $"kerf {laser.KerfMm:0.###} mm is taken off: cut ON the lines; slots become {slot:0.###} mm, drawn "
                    + $"{slot - laser.KerfMm:0.###}"),
            $"{(order.DieView ? "DIE VIEW: seen from the edges" : "PANEL VIEW: mirror for the die's side")}; origin: the engraved corner",
            "SLOT, PIN, SCREW, AIR, BOARD: cut through; ENGRAVE: single strokes; DOWEL: middle lines of dowels, drilled, not cut",
            .. Splits(cut, laser),
            "Cut a test slot in the same board first: the rule must go in by hand with a mallet and stand. Laser: its maker's guards, "
                + "extraction, "
                + "never left alone; local codes and qualified people come first; no risk assessment.",
        ];
    }

    private static IEnumerable<string> Splits(BoardCut cut, BoardLaser laser) => cut.Splits.Count == 0
        ? []
        :
        [
            Invariant(
                $"split at {(cut.SplitsAlongX ? "x" : "y")} = {string.Join(", ", cut.Splits.Select(s => Invariant($"{s:0.##}")))} mm, "
                    + $"pieces drawn "
                    + $"{BoardCut.ApartMm:0.#} mm apart; dowels {laser.DowelMm:0.#} x {6 * laser.DowelMm:0.#} mm in the middle of the "
                    + $"board's thickness"),
            "see that each part of a cavity at the split hangs on a bridge",
        ];
}
