using FeltNest.Ball;
using FeltNest.Files.Csv;
using FeltNest.Panel.Trial;
using static FeltNest.Files.Trials.TrialListing;

namespace FeltNest.Files.Trials;

/// <summary>Reads the readings of a trial wrap: CSV with the columns ball, place, gapMm and, where measured, waistMm.</summary>
internal static class TrialReader
{
    // A waist further off than this is another measure, mm.
    private const double MostWaistOffMm = 6;

    /// <summary>The readings of a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="ball">The ball that was wrapped.</param>
    /// <exception cref="InputException">Names the file, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<TrialReading> Read(string path, BallSpec ball) => Read(InputText.OfFile(path), ball);

    /// <summary>The readings of a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="ball">The ball that was wrapped.</param>
    /// <exception cref="InputException">Names the text, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<TrialReading> Read(InputText text, BallSpec ball)
    {
        double waist = TrialPlaces.OuterWaistMm(ball);
        HashSet<(string Ball, int Place)> read = [];
        IReadOnlyList<TrialReading> readings = CsvTable.Read(text, Listing).Each(row =>
        {
            TrialReading reading = Reading(row, waist);
            return read.Add((reading.Ball, reading.Place))
                ? reading
                : throw row.Fault(Place, $"place {reading.Place} of ball '{reading.Ball}' was read before: one line a place");
        });

        foreach (IGrouping<string, TrialReading> group in readings.GroupBy(reading => reading.Ball))
        {
            RequirePlaces(text.Name, group.Key, [.. group.Select(reading => reading.Place)]);
        }

        return readings;
    }

    private static TrialReading Reading(CsvRow row, double waist)
    {
        int place = row.Whole(Place);
        double? width = row.OptionalNumber(WaistMm);
        if (width is not null && TrialPlaces.WaistOf(place) is null)
        {
            throw row.Fault(WaistMm, FormattableString.Invariant(
                $"{width} stands at place {place}, which lies on no waist: write it at place 1 or 9 for panel A, 5 or 13 for panel B"));
        }

        if (width is { } wide && Math.Abs(wide - waist) > MostWaistOffMm)
        {
            throw row.Fault(WaistMm, FormattableString.Invariant(
                $"{wide} mm, but this ball's is {waist:0.0} mm over the outer face: measure from seam to seam, in millimetres"));
        }

        return new TrialReading { Ball = row.Text(TrialListing.Ball), Place = place, GapMm = row.Number(GapMm), WaistMm = width };
    }

    private static void RequirePlaces(string file, string ball, int[] places)
    {
        int[] missing = [.. TrialPlaces.Needed.Except(places)];
        if (missing.Length > 0)
        {
            throw new InputException(
                file, $"ball '{ball}'", $"has no reading at place {string.Join(", ", missing)}: waists and tips (1, 5, 9, 13) are needed");
        }

        if (places.Length < TrialPlaces.Fewest)
        {
            throw new InputException(
                file, $"ball '{ball}'", $"has {places.Length} places; at least {TrialPlaces.Fewest} of {TrialPlaces.Count} are needed");
        }
    }
}
