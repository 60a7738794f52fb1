using FeltNest.Seam;

namespace FeltNest.Panel.Wrap;

/// <summary>Places of an edge laid on the sphere, told along the seam from the first waist on.</summary>
internal sealed record SeamPlaces
{
    /// <summary>Where each place lies round the seam, mm.</summary>
    public required IReadOnlyList<double> RoundMm { get; init; }

    /// <summary>Share of the seam that each place stands for; they add to 1.</summary>
    public required IReadOnlyList<double> Shares { get; init; }

    /// <summary>The two waists, the first place among them.</summary>
    public required IReadOnlyList<int> Waists { get; init; }

    /// <summary>The two tips, each after the waist of its number.</summary>
    public required IReadOnlyList<int> Tips { get; init; }

    /// <summary>Waists and tips by name, with their places round the seam, mm.</summary>
    public IReadOnlyList<(string Name, double At)> Named =>
    [
        .. Waists.Zip(Tips, (waist, tip) => new[] { ("waist", RoundMm[waist]), ("tip", RoundMm[tip]) }).SelectMany(pair => pair),
    ];

    /// <summary>The places of an edge that begins at a waist, the pole on +z: tips are farthest from it, waists nearest.</summary>
    public static SeamPlaces Of(IReadOnlyList<SpherePoint> edge)
    {
        int n = edge.Count;
        double[] steps = [.. edge.Select((here, i) => (edge[(i + 1) % n] - here).Length)];
        double whole = steps.Sum();
        double[] round = new double[n];
        for (int i = 1; i < n; i++)
        {
            round[i] = round[i - 1] + steps[i - 1];
        }

        return new SeamPlaces
        {
            RoundMm = round,
            Shares = [.. steps.Select((step, i) => (step + steps[(i + n - 1) % n]) / (2 * whole))],
            Waists = [0, Enumerable.Range(n / 4, n / 2).MaxBy(i => edge[i].Z)],
            Tips = [Enumerable.Range(0, n / 2).MinBy(i => edge[i].Z), Enumerable.Range(n / 2, n - (n / 2)).MinBy(i => edge[i].Z)],
        };
    }
}
