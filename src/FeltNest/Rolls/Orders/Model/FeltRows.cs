using FeltNest.Rolls.Orders.Model.Mixed;

namespace FeltNest.Rolls.Orders.Model;

/// <summary>The felt in the model: rolls in stock, rolls to buy, what they cost.</summary>
internal sealed class FeltRows
{
    private readonly OrderRequest question;
    private readonly List<RollUnit> units = [];
    private readonly List<FeltRoom> rooms = [];
    private readonly List<(FeltPurchase Offer, Unknown Count)> bought = [];

    /// <summary>Adds all felt of a question to a model.</summary>
    public FeltRows(MixedModel model, OrderRequest question)
    {
        this.question = question;
        foreach (List<StockRoll> alike in LikeRolls.Sorted(question))
        {
            foreach (RollUnit unit in Added(model, alike, question))
            {
                LinearSum room = new LinearSum()
                    .Add(unit.Kept)
                    .Add(unit.Begun, -question.ClearM(unit.Kind))
                    .Add(unit.Rolls.Count * question.ClearM(unit.Kind));
                Cost.Add(unit.Cost);
                rooms.Add(new FeltRoom(unit.Kind, room));
            }
        }

        foreach (FeltPurchase offer in question.Offers)
        {
            Buy(model, offer, question);
        }
    }

    /// <summary>Rolls and groups of rolls.</summary>
    public IReadOnlyList<RollUnit> Units => units;

    /// <summary>Where felt can be kept back.</summary>
    public IReadOnlyList<FeltRoom> Rooms => rooms;

    /// <summary>Rolls to buy of each offer.</summary>
    public IReadOnlyList<(FeltPurchase Offer, Unknown Count)> Bought => bought;

    /// <summary>Cost of all felt.</summary>
    public LinearSum Cost { get; } = new();

    /// <summary>Balls that the model may count too few of at the most: a piece gives whole balls, the model takes a ball off each of its
    /// uneven groups.</summary>
    public long BallsCountedSafely => units.Sum(unit =>
        unit.Rolls.Count * unit.Choices.Sum(c => (long)c.Die.Shape.UnevenClasses(question.GoodShare(unit.Kind, c.Die))));

    private RollUnit[] Added(MixedModel model, List<StockRoll> alike, OrderRequest question)
    {
        CutChoice[] choices = CutChoice.On(alike[0], question);
        RollUnit[] added;
        if (choices.Length == 0)
        {
            added = [];
        }
        else if (alike.Count > 1 && LikeRolls.In(model, alike, choices, question) is { } group)
        {
            added = [group];
        }
        else
        {
            added = [.. alike.Select(roll => (RollUnit)SingleRoll.In(model, roll, choices, question))];
        }


        // Of rolls that are alike the first are begun first.
        for (int i = 1; i < added.Length; i++)
        {
            model.AtMost(new LinearSum().Add(added[i].Begun).Add(added[i - 1].Begun, -1), 0);
        }

        units.AddRange(added);
        return added;
    }

    private void Buy(MixedModel model, FeltPurchase offer, OrderRequest question)
    {
        int most = MostRolls(offer.Roll, question);
        int least = (int)Math.Ceiling((offer.MinimumM / offer.Roll.LengthM) - 1e-9);
        if (most == 0)
        {
            return;
        }

        RollUnit[] copies = Added(model, [.. Enumerable.Range(1, most).Select(offer.Copy)], question);
        double price = (double)offer.Roll.PricePerMetre * offer.Roll.LengthM;
        double value = question.Rules.RemnantValuePercent / 100;
        Unknown count = model.Whole(0, Math.Max(most, least));
        Unknown any = model.Choice();
        LinearSum begun = new();
        LinearSum kept = new();
        foreach (RollUnit unit in copies)
        {
            begun.Add(unit.Begun);
            kept.Add(unit.Kept);
            Cost.Add(unit.Cost);
        }

        // Rolls bought and not begun go to stock at what remnants are worth.
        LinearSum spare = new LinearSum().Add(count).Add(begun, -1);
        model.AtLeast(spare, 0);
        model.AtMost(new LinearSum().Add(count).Add(any, -Math.Max(most, least)), 0);
        model.AtLeast(new LinearSum().Add(count).Add(any, -Math.Max(1, least)), 0);
        Cost.Add(spare, price * (1 - value));
        bought.Add((offer, count));
        rooms.Add(new FeltRoom(offer.Roll with { Offer = offer.Roll.Name }, kept.Add(spare, question.ClearM(offer.Roll))));
    }

    /// <summary>Rolls of an offer that would serve all orders it suits, one order to its own rolls, and their reserves.</summary>
    internal static int MostRolls(StockRoll roll, OrderRequest question)
    {
        int most = 0;
        foreach (CoverOrder order in question.Orders)
        {
            CutDie[] dies = [.. question.Dies.Where(die => question.Fits(order, roll, die))];
            if (dies.Length > 0)
            {
                most += dies.Max(die => 1 + (int)Math.Ceiling(
                    (order.Balls
                        + order.ReserveBalls) / (die.Shape.BallsOf(
                            die.Shape.StrikesIn(question.ClearM(roll)), question.GoodShare(roll, die)) + 1e-9)));
            }
        }

        return Math.Min(most, MostBought);
    }

    /// <summary>Most rolls of one offer in one plan.</summary>
    internal const int MostBought = 200;
}
