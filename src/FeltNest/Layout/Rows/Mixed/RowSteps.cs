namespace FeltNest.Layout.Rows.Mixed;

/// <summary>Least steps between kinds of row at one pitch, with the model that puts them in sequence.</summary>
internal sealed class RowSteps
{
    private readonly (double Step, double Shift)[,] between;
    private readonly double leastStep, leastEnds;

    internal RowSteps((double Step, double Shift)[,] between, double[] bottoms, double[] tops, Func<int, int, int, bool> meets)
    {
        this.between = between;
        int n = bottoms.Length;
        double[,] steps = new double[n, n];
        leastStep = double.PositiveInfinity;
        for (int i = 0; i < n; i++)
        {
            for (int k = 0; k < n; k++)
            {
                steps[i, k] = between[i, k].Step;
                leastStep = Math.Min(leastStep, steps[i, k]);
            }
        }

        leastEnds = bottoms.Min() + tops.Min();
        Model = new RowSequenceModel(bottoms, tops, steps, meets);
    }

    /// <summary>Chooses the sequence.</summary>
    internal RowSequenceModel Model { get; }

    /// <summary>Step and shift from a row of one kind to the next of another.</summary>
    internal (double Step, double Shift) Between(int below, int above) => between[below, above];

    /// <summary>False when even the least steps do not fit: saves the model's work.</summary>
    internal bool MayFit(int rows, double width) => leastEnds + ((rows - 1) * leastStep) <= width;
}
