namespace FeltNest.Rolls.Orders.Clock;

/// <summary>Where presses, dies, rolls and orders stand after some pieces of a sequence.</summary>
internal sealed class ClockState
{
    private readonly ClockShop shop;

    /// <summary>The state before the first piece.</summary>
    /// <param name="shop">The shop.</param>
    public ClockState(ClockShop shop)
    {
        this.shop = shop;
        int presses = shop.Open.Length;
        (Free, Busy, On, RollOn) = (new double[presses], new double[presses], new int[presses], new int[presses]);
        (PlaceOfDie, DieFree, Used) = (new int[shop.DieFrom.Length], new double[shop.DieFrom.Length], new bool[shop.DieFrom.Length]);
        (PlaceOfRoll, RollFree) = (new int[shop.RollFrom.Length], new double[shop.RollFrom.Length]);
        Done = new double[shop.Due.Length];
        Begin();
    }

    /// <summary>When each press is free.</summary>
    public double[] Free { get; }

    /// <summary>Hours each press has been at work.</summary>
    public double[] Busy { get; }

    /// <summary>The die on each press; -1 for none.</summary>
    public int[] On { get; }

    /// <summary>The roll each press cut last; -1 for none.</summary>
    public int[] RollOn { get; }

    /// <summary>The press each die stands on; -1 for none.</summary>
    public int[] PlaceOfDie { get; }

    /// <summary>When each die is free.</summary>
    public double[] DieFree { get; }

    /// <summary>Whether each die has been used.</summary>
    public bool[] Used { get; }

    /// <summary>The press each roll was cut on last; -1 for none.</summary>
    public int[] PlaceOfRoll { get; }

    /// <summary>When each roll is free.</summary>
    public double[] RollFree { get; }

    /// <summary>When the last piece of each order ends; below 0 where none is cut.</summary>
    public double[] Done { get; }

    /// <summary>Good balls of pieces without a place.</summary>
    public long Unplaced { get; set; }

    /// <summary>Dies mounted that did not stand there.</summary>
    public int Mountings { get; set; }

    /// <summary>Cost of mountings and overtime.</summary>
    public double Money { get; set; }

    /// <summary>Goes back to the state before the first piece.</summary>
    public void Begin()
    {
        Array.Clear(Free);
        Array.Clear(Busy);
        Array.Clear(Used);
        Array.Fill(RollOn, -1);
        Array.Fill(PlaceOfDie, -1);
        Array.Fill(PlaceOfRoll, -1);
        Array.Fill(Done, -1);
        shop.DieFrom.CopyTo(DieFree, 0);
        shop.RollFrom.CopyTo(RollFree, 0);
        shop.Mounted.CopyTo(On, 0);
        for (int press = 0; press < On.Length; press++)
        {
            if (On[press] >= 0)
            {
                PlaceOfDie[On[press]] = press;
            }
        }

        (Unplaced, Mountings, Money) = (0, 0, 0);
    }

    /// <summary>Takes over another state of the same shop.</summary>
    public void Take(ClockState other)
    {
        other.Free.CopyTo(Free, 0);
        other.Busy.CopyTo(Busy, 0);
        other.On.CopyTo(On, 0);
        other.RollOn.CopyTo(RollOn, 0);
        other.PlaceOfDie.CopyTo(PlaceOfDie, 0);
        other.DieFree.CopyTo(DieFree, 0);
        other.Used.CopyTo(Used, 0);
        other.PlaceOfRoll.CopyTo(PlaceOfRoll, 0);
        other.RollFree.CopyTo(RollFree, 0);
        other.Done.CopyTo(Done, 0);
        (Unplaced, Mountings, Money) = (other.Unplaced, other.Mountings, other.Money);
    }
}
