namespace FeltNest.Layout.Rows.Mixed;

/// <summary>Least steps between kinds of row at one pitch, with the model that puts them in sequence.</summary>
internal sealed class RowSteps
{
    private readonly (double Step, double Shift)[,] between;
    private readonly int[] copies;
    private readonly double leastEnds;
    private readonly double leastStepPerPanel;

    internal RowSteps(
        (double Step, double Shift)[,] between, int[] copies, double[] bottoms, double[] tops, Func<int, int, int, bool> meets)
    {
        this.between = between;
        this.copies = copies;
        MostCopies = Math.Max(1, copies.Max());
        int n = bottoms.Length;
        double[,] steps = new double[n, n];
        leastStepPerPanel = double.PositiveInfinity;
        for (int i = 0; i < n; i++)
        {
            for (int k = 0; k < n; k++)
            {
                steps[i, k] = between[i, k].Step;
                leastStepPerPanel = Math.Min(leastStepPerPanel, steps[i, k] / Math.Max(1, copies[k]));
            }
        }

        leastEnds = bottoms.Min() + tops.Min();
        Model = new RowSequenceModel(copies, bottoms, tops, steps, meets);
    }

    /// <summary>Chooses the sequence.</summary>
    internal RowSequenceModel Model { get; }

    /// <summary>Step and shift from a row of one kind to the next of another.</summary>
    internal (double Step, double Shift) Between(int below, int above) => between[below, above];

    /// <summary>Greatest number of times a kind stands in a repeat, at least 1.</summary>
    internal int MostCopies { get; }

    /// <summary>How often a kind stands in a repeat.</summary>
    internal int Copies(int kind) => copies[kind];

    /// <summary>False when even the least steps do not fit: saves the model's work.</summary>
    internal bool MayFit(int panels, double width) => leastEnds + ((panels - MostCopies) * leastStepPerPanel) <= width;
}
