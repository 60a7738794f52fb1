namespace FeltNest.Rolls.Orders;

/// <summary>Balls somebody wants covers for.</summary>
internal sealed record CoverOrder
{
    /// <summary>Name of the order, once in a list.</summary>
    public required string Name { get; init; }

    /// <summary>Ball, by the name the dies carry.</summary>
    public required string Ball { get; init; }

    /// <summary>Good balls wanted.</summary>
    public required int Balls { get; init; }

    /// <summary>Day on which the last cover must be cut.</summary>
    public required DateOnly Due { get; init; }

    /// <summary>Weight of a day late, 1 to 9: one day late of an order of priority 3 counts as three days late of one of priority
    /// 1.</summary>
    public int Priority { get; init; } = 1;

    /// <summary>Whether all its felt must be of one shade lot.</summary>
    public required bool OneLot { get; init; }

    /// <summary>Felt it must be cut from, or null for any felt its dies reach.</summary>
    public required string? Felt { get; init; }

    /// <summary>Balls for which felt of its lot is to stay uncut in stock, for rejects found later.</summary>
    public required int ReserveBalls { get; init; }

    /// <summary>The one direction of nap that one-way dies cut it from, or null where that is not to be kept.</summary>
    public NapDirection? NapSide { get; init; }

    /// <summary>What it is held to and kept from, or null for nothing.</summary>
    public OrderPins? Pins { get; init; }

    /// <summary>Last day on which it is in time: its due day, or the day it is to be cut on where that is sooner.</summary>
    public DateOnly InTimeUntil => Pins?.Day is { } day && day < Due ? day : Due;
}
