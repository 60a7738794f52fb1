using CsCheck;
using FeltNest.Layout.Rows.Mixed;
using Xunit;

namespace FeltNest.Tests.Layout.Rows.Mixed;

/// <summary>The shortest way through the network against all sequences written out.</summary>
public sealed class RowSequenceModelTests
{
    [Fact]
    public void The_sequence_needs_the_least_width_of_all_that_keep_rows_next_but_one_apart() =>
        Gen.Int[0, 1_000_000].Sample(seed => AgreesWithAllSequences(new Random(seed)), iter: Runs.Count(1000));

    [Fact]
    public void A_row_of_all_panels_wins_where_rows_next_but_one_would_meet()
    {
        // Kind 0 stands once in the repeat and needs 1 + 2 + 2 + 1 for three rows, but rows next but one meet; kinds 1 and 2 stand three
        // times and are 9 and 7 high.
        double[,] steps = { { 2, 9, 9 }, { 9, 9, 9 }, { 9, 9, 9 } };
        Assert.Equal(("2", 7.0), Found(meet: true));
        Assert.Equal(("0 0 0", 6.0), Found(meet: false));

        (string Kinds, double Width) Found(bool meet)
        {
            (int[] kinds, double width) = new RowSequenceModel([1, 3, 3], [1, 1, 3], [1, 8, 4], steps, (_, _, _) => meet).Least(3)!.Value;
            return (string.Join(' ', kinds), width);
        }
    }

    [Fact]
    public void Where_nothing_fits_there_is_no_sequence()
    {
        double[,] never = { { double.PositiveInfinity } };
        Assert.Null(new RowSequenceModel([1], [1], [1], never, (_, _, _) => false).Least(2));
        Assert.Null(new RowSequenceModel([2], [1], [1], new double[,] { { 1 } }, (_, _, _) => false).Least(3));
        Assert.Null(new RowSequenceModel([0], [double.PositiveInfinity], [1], new double[,] { { 1 } }, (_, _, _) => false).Least(1));
    }

    private static bool AgreesWithAllSequences(Random random)
    {
        int kinds = random.Next(1, 4);
        int panels = random.Next(2, 5);
        int[] copies = [.. Enumerable.Range(0, kinds).Select(_ => random.Next(0, 4))];
        double[] bottoms = [.. copies.Select(c => c == 0 ? double.PositiveInfinity : random.NextDouble())];
        double[] tops = [.. copies.Select(_ => random.NextDouble())];
        double[,] steps = new double[kinds, kinds];
        bool[,,] meet = new bool[kinds, kinds, kinds];
        for (int a = 0; a < kinds; a++)
        {
            for (int b = 0; b < kinds; b++)
            {
                steps[a, b] = random.Next(8) == 0 ? double.PositiveInfinity : 0.1 + (0.5 * random.NextDouble());
                for (int c = 0; c < kinds; c++)
                {
                    meet[a, b, c] = random.Next(2) == 0;
                }
            }
        }

        double least = double.PositiveInfinity;
        Extend([], 0, 0);
        (int[] Kinds, double Width)? found = new RowSequenceModel(copies, bottoms, tops, steps, (a, b, c) => meet[a, b, c]).Least(panels);
        return found is null
            ? double.IsInfinity(least)
            : Math.Abs(found.Value.Width - least) < 1e-9
                && Math.Abs(WidthOf(found.Value.Kinds) - least) < 1e-9
                && found.Value.Kinds.Sum(k => copies[k]) == panels;

        void Extend(List<int> rows, int count, int depth)
        {
            if (count == panels)
            {
                least = Math.Min(least, WidthOf(rows));
                return;
            }

            for (int k = 0; k < kinds && depth < panels; k++)
            {
                if (copies[k] > 0 && count + copies[k] <= panels)
                {
                    Extend([.. rows, k], count + copies[k], depth + 1);
                }
            }
        }

        double WidthOf(IReadOnlyList<int> rows)
        {
            double width = bottoms[rows[0]] + tops[rows[^1]];
            for (int i = 1; i < rows.Count; i++)
            {
                width += i > 1 && meet[rows[i - 2], rows[i - 1], rows[i]] ? double.PositiveInfinity : steps[rows[i - 1], rows[i]];
            }

            return width;
        }
    }
}
