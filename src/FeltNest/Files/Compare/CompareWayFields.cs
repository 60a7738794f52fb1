using FeltNest.Files.Fields;

namespace FeltNest.Files.Compare;

/// <summary>Fields of the ways to cut the felt of a row, and of what is bought of it.</summary>
internal static class CompareWayFields
{
    /// <summary>Fields of <c>rows[].purchase</c>.</summary>
    internal static class PurchaseFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField NeededM = Set.Add(new NumberField("neededM"));
        public static readonly NumberField BoughtM = Set.Add(
            new NumberField("boughtM", "whole rolls, no less than the least length sold"));
        public static readonly NumberField Rolls = Set.Add(
            new NumberField("rolls", "null where the length of a roll is not known") { OrNull = true, Unit = "rolls" });
        public static readonly NumberField Price = Set.Add(
            new NumberField("price", "of one unit, that of its tier") { Unit = "in its currency" });
    }

    /// <summary>Fields of <c>rows[].leastFelt</c> and <c>rows[].front[]</c>.</summary>
    internal static class WayFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField PanelsPerMetre = Set.Add(new NumberField("panelsPerMetre"));
        public static readonly NumberField PanelsPerStrike = Set.Add(
            new NumberField("panelsPerStrike", "panels of one layer: the cavities of the die"));
        public static readonly NumberField SquareMetresPerThousandBalls = Set.Add(new NumberField("squareMetresPerThousandBalls"));
        public static readonly NumberField StrikesPerThousandBalls = Set.Add(new NumberField("strikesPerThousandBalls", "strikes"));
        public static readonly NumberField Felt = Set.Add(
            new NumberField("felt", "money for felt less waste sold; this and the next null where no price is known") { OrNull = true });
        public static readonly NumberField Strikes = Set.Add(
            new NumberField("strikes", "money for labour, machine and board of the strikes, with their overhead") { OrNull = true });
        public static readonly NumberField Die =
            Set.Add(new NumberField("die", "money for wear of the die, with its overhead") { OrNull = true });
        public static readonly NumberField CostPerThousandBalls = Set.Add(new NumberField("costPerThousandBalls") { OrNull = true });
    }
}
