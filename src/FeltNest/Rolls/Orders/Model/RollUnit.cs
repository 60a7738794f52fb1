using FeltNest.Rolls.Orders.Model.Mixed;

namespace FeltNest.Rolls.Orders.Model;

/// <summary>One roll, or several alike, in the model: what it gives each order by each die, what it costs, and what it keeps.</summary>
internal abstract class RollUnit
{
    /// <summary>The rolls it stands for.</summary>
    public required IReadOnlyList<StockRoll> Rolls { get; init; }

    /// <summary>Cuts it may make.</summary>
    public required IReadOnlyList<CutChoice> Choices { get; init; }

    /// <summary>Its cost.</summary>
    public LinearSum Cost { get; } = new();

    /// <summary>How many of its rolls are begun.</summary>
    public LinearSum Begun { get; } = new();

    /// <summary>Metres that stay on begun rolls and go back to stock.</summary>
    public LinearSum Kept { get; } = new();

    /// <summary>What any of its rolls is.</summary>
    public StockRoll Kind => Rolls[0];

    /// <summary>Strikes of every choice, in their order.</summary>
    public abstract IReadOnlyList<LinearSum> Strikes { get; }

    /// <summary>Pieces cut by every choice, in their order.</summary>
    public abstract IReadOnlyList<LinearSum> Pieces { get; }

    /// <summary>Strikes of every choice on every roll begun, of the best solution so far.</summary>
    public abstract IEnumerable<int[]> Cuts(MixedModel model);

    /// <summary>Values of its whole numbers for given strikes of every choice on each of its rolls.</summary>
    public abstract IEnumerable<(Unknown Variable, double Value)> At(IReadOnlyList<int[]> cuts);

    /// <summary>Balls of a choice. Safely: each uneven pairing group of a piece may leave part of a ball unused; else at the
    /// most.</summary>
    public LinearSum BallsOf(int choice, OrderRequest question, bool safely)
    {
        CutChoice cut = Choices[choice];
        double share = question.GoodShare(Kind, cut.Die);
        return new LinearSum()
            .Add(Strikes[choice], cut.Die.Shape.BallsPerStrike(share))
            .Add(Pieces[choice], safely ? -cut.Die.Shape.UnevenClasses(share) : 0);
    }

    /// <summary>A sum of one variable.</summary>
    protected static LinearSum Of(Unknown variable) => new LinearSum().Add(variable);
}
