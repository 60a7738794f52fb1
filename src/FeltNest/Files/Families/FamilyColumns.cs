using FeltNest.Cost.Families;
using FeltNest.Files.Csv;
using FeltNest.Files.Fields;
using static FeltNest.Files.Families.FamilyDocument;

namespace FeltNest.Files.Families;

/// <summary>Columns of <c>family.csv</c>: a line for every ball on every width.</summary>
internal static class FamilyColumns
{
    public static readonly ResultColumns<Line> Columns = new ResultColumns<Line>("family.csv")
        .Text(PairFields.Ball, line => line.Ball)
        .Text(PairFields.Width, line => line.Width.Name)
        .Number(WidthFields.WidthMm, line => line.Width.WidthMm)
        .Number(PairFields.PanelsPerMetre, line => line.Pair.Way.Layout.PanelsPerMetre)
        .Number(PairFields.SquareMetresPerThousandBalls, line => line.Pair.Way.SquareMetres)
        .Number(PairFields.StrikesPerThousandBalls, line => line.Pair.Way.Account.StrikesPerThousandBalls)
        .Number(PairFields.Cavities, line => line.Pair.Way.Account.Cavities)
        .Money(PairFields.RunningPerThousandBalls, line => line.Pair.RunningPerThousandBalls)
        .Money(PairFields.RunningPerYear, line => line.Pair.RunningPerYear)
        .Whole(PairFields.Dies, line => line.Pair.Dies?.Dies)
        .Whole(PairFields.ReRules, line => line.Pair.Dies?.ReRules)
        .Money(PairFields.DiesPerYear, line => line.Pair.Dies?.PerYear ?? 0)
        .Money(PairFields.CostPerYear, line => line.Pair.PerYear)
        .Text(
            new TextField("takenWith", "numbers of widths with whose plans the ball is cut here: `1 2 any`; blank where with none")
            {
                OrNull = true,
            }, TakenWith);

    /// <summary>The file's bytes.</summary>
    public static byte[] Csv(FamilyAnswer answer) => Columns.Csv(answer.Pairs.Select(pair => new Line
    {
        Answer = answer,
        Pair = pair,
        Ball = answer.Question.Balls[pair.Ball].Name,
        Width = answer.Question.Widths[pair.Width],
    }));

    private static string? TakenWith(Line line)
    {
        string words = string.Join(
            ' ',
            line.Answer.Plans
                .Where(plan => plan.Takes.Contains(line.Pair))
                .Select(plan => plan.MostWidths is { } most ? $"{most}" : "any"));
        return words.Length > 0 ? words : null;
    }

    /// <summary>One ball on one width.</summary>
    internal sealed record Line
    {
        /// <summary>The whole.</summary>
        public required FamilyAnswer Answer { get; init; }

        /// <summary>The pair.</summary>
        public required FamilyPair Pair { get; init; }

        /// <summary>Name of the ball.</summary>
        public required string Ball { get; init; }

        /// <summary>The width.</summary>
        public required FamilyWidth Width { get; init; }
    }
}
