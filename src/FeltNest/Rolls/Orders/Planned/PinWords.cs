namespace FeltNest.Rolls.Orders.Planned;

/// <summary>What an order is held to and kept from, in words.</summary>
internal static class PinWords
{
    /// <summary>"; it is held to ... and kept from ...", or nothing where the list of orders leaves it free.</summary>
    public static string Of(CoverOrder order)
    {
        if (order.Pins is not { } pins)
        {
            return string.Empty;
        }

        string held = Joined(
            ("lot", pins.Lots), ("roll", pins.Rolls), ("press", pins.Presses), ("die", pins.Dies),
            ("day", pins.Day is { } day ? [InvariantText.Invariant($"{day:yyyy-MM-dd}")] : []));
        string barred = Joined(("lot", pins.NotLots), ("roll", pins.NotRolls), ("press", pins.NotPresses), ("die", pins.NotDies));
        string[] both =
        [
            .. held.Length == 0 ? Array.Empty<string>() : [$"held to {held}"],
            .. barred.Length == 0 ? Array.Empty<string>() : [$"kept from {barred}"],
        ];
        return both.Length == 0 ? string.Empty : $"; the list of orders has it {string.Join(" and ", both)}";
    }

    private static string Joined(params (string Kind, IReadOnlyList<string> Names)[] pins) =>
        string.Join(", ", pins.Where(p => p.Names.Count > 0).Select(p => $"{p.Kind} {string.Join(" or ", p.Names)}"));
}
