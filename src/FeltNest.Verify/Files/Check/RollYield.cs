namespace FeltNest.Files.Check;

/// <summary>What a study says a roll yields: felt per thousand balls must follow from balls per metre, waste from area and width.</summary>
internal static class RollYield
{
    /// <summary>Checks one entry.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="widthMm">Width of the roll, mm.</param>
    /// <param name="areaMm2">Area of a panel, mm2.</param>
    public static void Check(StatedFields entry, double widthMm, double areaMm2)
    {
        double panels = entry.Number("panelsPerMetre");
        double balls = entry.Number("ballsPerMetre");
        entry.Keep(balls <= (panels / 2) + Shares.Room(panels), "ballsPerMetre", "is more than half the panels per metre");
        double waste = 100 - (panels * areaMm2 / (10 * widthMm));
        entry.Same("wastePercent", waste, 1e-4);

        StatedFields felt = entry.Needed("perThousandBalls");
        double? metres = balls > 0 ? 1000 / balls : null;
        felt.Same("metres", metres, Shares.Room(metres ?? 0));
        double? square = metres * widthMm / 1000;
        felt.Same("squareMetres", square, Shares.Room(square ?? 0));
    }

    /// <summary>Kilograms of all entries must stand in one proportion to their square metres.</summary>
    public static void OneMass(IReadOnlyList<StatedFields> entries)
    {
        (double Square, double Kg)[] felts = [.. entries
            .Select(e => e.Needed("perThousandBalls"))
            .Where(f => f.Optional("kilograms") is not null && f.Optional("squareMetres") > 0)
            .Select(f => (f.Number("squareMetres"), f.Number("kilograms")))];
        double[] masses = [.. felts.Select(f => f.Kg / f.Square).Order()];
        if (masses.Length > 1 && masses[^1] - masses[0] > Shares.Room(masses[0]))
        {
            entries[0].Needed("perThousandBalls").Keep(false, "kilograms", "stand in different proportions to the square metres");
        }
    }
}
