using FeltNest.Files.Fields;

namespace FeltNest.Files.Dies;

/// <summary>Fields of a die's file that tell of its rule in pieces, where it stands near to itself, its stock and its board for the
/// laser.</summary>
internal static class DieRuleFields
{
    /// <summary>Fields of <c>edges[].narrow[]</c>.</summary>
    internal static class NarrowFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WordField Between = Set.Add(
            new WordField("between", [Panel, Waste], "what lies between the two stretches: a neck of the panel, or a slit of the waste"));
        public static readonly NumberField WidthMm = Set.Add(new NumberField("widthMm", "least width from edge to edge"));
        public static readonly NumberField X = Set.Add(new NumberField("x", "its middle, in the part's frame") { Unit = "mm" });
        public static readonly NumberField Y = Set.Add(new NumberField("y") { Unit = "mm" });
        public static readonly NumberField LengthMm = Set.Add(new NumberField("lengthMm", "length over which it is too narrow"));

        internal const string Panel = "panel";
        internal const string Waste = "waste";
    }

    /// <summary>Fields of <c>strips[]</c>.</summary>
    internal static class StripFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Panel = Set.Add(new WholeField("panel", "place in the layout's list of panels"));
        public static readonly WholeField Number = Set.Add(new WholeField("number", "from 1 in the part"));
        public static readonly WholeField Count = Set.Add(new WholeField("count", "such pieces in one die"));
        public static readonly NumberField MiddleMm = Set.Add(
            new NumberField("middleMm", "middle line of the body when bent, as in the slot of the board"));
        public static readonly NumberField BlankMm = Set.Add(
            new NumberField("blankMm", "flat piece: neutral line of the bent body; mitred ends are measured in the middle of the body"));
        public static readonly NumberField StartMitreDeg = Set.Add(
            new NumberField("startMitreDeg", "cut off square: half the bend of the corner; null for a square end") { OrNull = true });
        public static readonly NumberField EndMitreDeg = Set.Add(new NumberField("endMitreDeg", "the same of the end") { OrNull = true });
        public static readonly ObjectsField Bends =
            Set.Add(new ObjectsField("bends", BendFields.Set, "bends in order along the flat piece"));
        public static readonly RowsField Notches = Set.Add(
            new RowsField("notches", ["fromMm", "toMm"], "notches over bridges [from, to] along the flat piece, mm"));
    }

    /// <summary>Fields of <c>strips[].bends[]</c>.</summary>
    internal static class BendFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField FromMm = Set.Add(new NumberField("fromMm", "where it begins along the flat piece"));
        public static readonly NumberField ToMm = Set.Add(new NumberField("toMm", "where it ends"));
        public static readonly NumberField TurnDeg = Set.Add(
            new NumberField("turnDeg", "angle in the die; above 0 toward the panel, below toward the waste"));
        public static readonly NumberField InsideRadiusMm = Set.Add(
            new NumberField("insideRadiusMm", "radius of the inner face of the body in the die"));
        public static readonly NumberField NeutralShare = Set.Add(
            new NumberField("neutralShare", "where the bend keeps its length, share of the thickness from its inner face"));
        public static readonly NumberField SetTurnDeg = Set.Add(
            new NumberField("setTurnDeg", "angle to form before it springs back; null where no test bends are known") { OrNull = true });
        public static readonly NumberField SetRadiusMm = Set.Add(
            new NumberField("setRadiusMm", "inside radius to form; null where no test bends are known") { OrNull = true });
        public static readonly FlagField Tested = Set.Add(
            new FlagField("tested", "whether the test bends reach that radius") { Default = false });
    }

    /// <summary>Fields of <c>stock</c>.</summary>
    internal static class StockFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField LengthMm = Set.Add(new NumberField("lengthMm", "one length of stock"));
        public static readonly NumberField CutLossMm = Set.Add(new NumberField("cutLossMm", "lost at each cut"));
        public static readonly WholeField Dies = Set.Add(new WholeField("dies", "dies it is for"));
        public static readonly WholeField Lengths = Set.Add(new WholeField("lengths", "lengths of stock taken"));
        public static readonly WholeField Bound = Set.Add(new WholeField("bound", "fewest that any plan can take"));
        public static readonly ObjectsField Cuts = Set.Add(new ObjectsField("cuts", CutFields.Set, "how the lengths are cut"));
    }

    /// <summary>Fields of <c>stock.cuts[]</c>.</summary>
    internal static class CutFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Times = Set.Add(new WholeField("times", "lengths cut so"));
        public static readonly RowsField Pieces = Set.Add(
            new RowsField("pieces", ["strip", "count"], "pieces [place in the list of strips from 0, count]"));
        public static readonly NumberField OffcutMm = Set.Add(new NumberField("offcutMm", "what is left over"));
    }

    /// <summary>Fields of <c>board.laser</c>.</summary>
    internal static class CutBoardFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField KerfMm = Set.Add(new NumberField("kerfMm", "taken off all lines that are cut through"));
        public static readonly NumberField SlotMm = Set.Add(new NumberField("slotMm", "width of a slot when cut"));
        public static readonly NumberField BridgesMm = Set.Add(new NumberField("bridgesMm", "length of one bridge"));
        public static readonly FlagField Mirrored = Set.Add(new FlagField("mirrored", "drawn from the die's side"));
        public static readonly RowsField Splits = Set.Add(
            new RowsField("splits", ["x", "y"], "where the board is split [x, y], the other 0, mm from its lower left corner as drawn"));
    }
}
