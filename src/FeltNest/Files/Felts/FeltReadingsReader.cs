using FeltNest.Ball.Passport;
using FeltNest.Files.Csv;
using FeltNest.Files.Fields;
using static FeltNest.Files.Felts.FeltReadingsListing;
using static FeltNest.InvariantText;

namespace FeltNest.Files.Felts;

/// <summary>Reads the readings of a lot of felt: CSV, one line a reading.</summary>
internal static class FeltReadingsReader
{
    // A strip stretches by no more than this share of its length, and is compressed by no more than that, before a unit has slipped.
    private const double MostPulled = 0.6;
    private const double MostPushed = 0.3;

    // A cure that changes a length by more than this share is a slip too.
    private const double MostCured = 0.35;

    // Lengths of a strip that just closes, as shares of the core's circumference.
    private const double LeastRound = 0.9;
    private const double MostRound = 1.6;

    /// <summary>The readings of a file.</summary>
    /// <exception cref="InputException">Names the file, the line, the column, the value found and what is allowed.</exception>
    public static FeltReadings Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The readings of a text.</summary>
    /// <exception cref="InputException">Names the text, the line, the column, the value found and what is allowed.</exception>
    public static FeltReadings Read(InputText text)
    {
        CsvTable table = CsvTable.Read(text, FeltReadingsListing.Listing);
        (CsvRow Row, FeltTest Test)[] lines = [.. table.Each(row => (row, Kind(row)))];
        CsvRow[] rows = [.. lines.Select(line => line.Row)];
        string[] days = [.. rows.Select(Day)];
        return new FeltReadings
        {
            Felt = Same(rows, FeltReadingsListing.Felt),
            Lot = Same(rows, Lot),
            Date = days.Max(StringComparer.Ordinal)!,
            Strips = Strips(lines),
            Wraps = [.. Of(lines, FeltTest.Wrap).Select(Wrap)],
            Discs = [.. Of(lines, FeltTest.Disc).Select(Disc)],
            Squares = [.. Of(lines, FeltTest.Square).Select(Square)],
            Thicknesses =
            [
                .. Of(lines, FeltTest.Thickness).Select(row => new SpecimenReading(row.Text(Specimen), row.Number(ThicknessMm))),
            ],
            Masses = [.. Of(lines, FeltTest.Mass).Select(Mass)],
        };
    }

    private static IEnumerable<CsvRow> Of((CsvRow Row, FeltTest Test)[] lines, FeltTest test) =>
        lines.Where(line => line.Test == test).Select(line => line.Row);

    private static string Day(CsvRow row) => Invariant($"{row.Day(Date):yyyy-MM-dd}");

    private static string Same(CsvRow[] rows, TextField column)
    {
        string first = rows[0].Text(column);
        foreach (CsvRow row in rows)
        {
            if (row.Text(column) is { } other && other != first)
            {
                throw row.Fault(column, $"'{other}', but the first line says '{first}': one file a lot");
            }
        }

        return first;
    }

    // The test of a line, with no column filled that it has no use for.
    private static FeltTest Kind(CsvRow row)
    {
        FeltTest test = EnumWord.Find<FeltTest>(row.Word(Test))!.Value;
        IReadOnlyList<Field> own = FeltReadingsListing.Of(test);
        return Own.FirstOrDefault(column => !own.Contains(column) && row.Has(column)) is { } stray
            ? throw row.Fault(
                stray, $"has no place in a line of test {EnumWord.Of(test)}: leave it blank; it fills "
                    + string.Join(", ", own.Select(column => column.Name)))
            : test;
    }

    private static List<StripReading> Strips((CsvRow Row, FeltTest Test)[] lines)
    {
        List<StripReading> strips = [];
        Dictionary<string, StripReading> first = [];
        foreach (CsvRow row in Of(lines, FeltTest.Strip))
        {
            StripReading read = Strip(row);
            if (!first.TryAdd(read.Specimen, read))
            {
                RequireAlike(row, read, first[read.Specimen]);
            }

            strips.Add(read);
        }

        return strips;
    }

    private static StripReading Strip(CsvRow row)
    {
        StripReading read = new()
        {
            Specimen = row.Text(Specimen),
            Direction = Way(row),
            GaugeMm = row.Number(LengthMm),
            WidthMm = row.Number(WidthMm),
            ForceN = row.Number(ForceN),
            ExtensionMm = row.Number(ExtensionMm),
            NarrowingMm = row.OptionalNumber(NarrowingMm),
        };
        if (read.Strain is < -MostPushed or > MostPulled)
        {
            throw row.Fault(
                ExtensionMm,
                Invariant($"{read.ExtensionMm} mm is {100 * read.Strain:0} % of {read.GaugeMm} mm; {-100 * MostPushed:0} to ")
                    + Invariant($"{100 * MostPulled:0} % is read: give millimetres"));
        }

        return read.NarrowingMm is null || read.Direction == FeltDirection.Warp
            ? read
            : throw row.Fault(NarrowingMm, "is read on strips along the warp alone: leave it blank");
    }

    private static void RequireAlike(CsvRow row, StripReading read, StripReading first)
    {
        if (read.Direction != first.Direction)
        {
            throw row.Fault(
                Direction, $"{EnumWord.Of(read.Direction)}, but strip '{read.Specimen}' was {EnumWord.Of(first.Direction)} before");
        }

        if (read.GaugeMm != first.GaugeMm)
        {
            throw row.Fault(LengthMm, Invariant($"{read.GaugeMm} mm, but strip '{read.Specimen}' had {first.GaugeMm} mm before"));
        }

        if (read.WidthMm != first.WidthMm)
        {
            throw row.Fault(WidthMm, Invariant($"{read.WidthMm} mm, but strip '{read.Specimen}' had {first.WidthMm} mm before"));
        }
    }

    private static FeltDirection Way(CsvRow row) =>
        EnumWord.Find<FeltDirection>(row.Has(Direction) ? row.Word(Direction) : throw row.Fault(Direction, "is blank: a value is wanted"))!
            .Value;

    private static WrapReading Wrap(CsvRow row)
    {
        WrapReading read = new()
        {
            Specimen = row.Text(Specimen),
            LengthMm = row.Number(LengthMm),
            WidthMm = row.Number(WidthMm),
            Shape = EnumWord.Find<CoreShape>(row.Has(Core) ? row.Word(Core) : throw row.Fault(Core, "is blank: a value is wanted"))!.Value,
            CoreDiameterMm = row.Number(CoreDiameterMm),
            ThicknessMm = row.Number(ThicknessMm),
        };
        double round = read.LengthMm / (Math.PI * read.CoreDiameterMm);
        if (round is < LeastRound or > MostRound)
        {
            throw row.Fault(
                LengthMm,
                Invariant($"{read.LengthMm} mm does not close once round a core of {read.CoreDiameterMm} mm: ")
                    + Invariant(
                        $"{LeastRound * Math.PI * read.CoreDiameterMm:0} to {MostRound * Math.PI * read.CoreDiameterMm:0} mm does"));
        }

        return read.WidthMm < read.CoreDiameterMm / 2
            ? read
            : throw row.Fault(
                WidthMm, Invariant($"{read.WidthMm} mm on a core of {read.CoreDiameterMm} mm: a strip below half of it lies round it"));
    }

    private static DiscReading Disc(CsvRow row)
    {
        DiscReading read = new()
        {
            Specimen = row.Text(Specimen),
            DiscDiameterMm = row.Number(DiscDiameterMm),
            CoreDiameterMm = row.Number(CoreDiameterMm),
            ThicknessMm = row.Number(ThicknessMm),
            Puckered = (row.Has(Puckered) ? row.Word(Puckered) : throw row.Fault(Puckered, "is blank: a value is wanted")) == Yes,
        };
        return read.DiscDiameterMm <= read.CoreDiameterMm * 1.1
            ? read
            : throw row.Fault(
                DiscDiameterMm,
                Invariant($"{read.DiscDiameterMm} mm on a core of {read.CoreDiameterMm} mm: the strain is known for discs up to 1.1 ")
                    + "diameters of the core");
    }

    private static SquareReading Square(CsvRow row)
    {
        SquareReading read = new()
        {
            Specimen = row.Text(Specimen),
            Direction = Way(row),
            BeforeMm = row.Number(LengthMm),
            AfterMm = row.Number(AfterMm),
        };
        if (read.Direction == FeltDirection.Bias)
        {
            throw row.Fault(Direction, "bias, but marks on a square lie along warp or weft");
        }

        return Math.Abs(read.ShrinkPercent) <= 100 * MostCured
            ? read
            : throw row.Fault(
                AfterMm, Invariant($"{read.AfterMm} mm after {read.BeforeMm} mm is {read.ShrinkPercent:0} %: give millimetres"));
    }

    private static SpecimenReading Mass(CsvRow row)
    {
        const double squareMillimetres = 1e6;
        return new SpecimenReading(
            row.Text(Specimen), row.Number(MassG) * squareMillimetres / (row.Number(LengthMm) * row.Number(WidthMm)));
    }
}
