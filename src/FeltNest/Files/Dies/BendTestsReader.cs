using FeltNest.Die.Bend;
using FeltNest.Files.Csv;
using static FeltNest.Files.Dies.BendTestsListing;

namespace FeltNest.Files.Dies;

/// <summary>Reads test bends: CSV with the columns insideRadiusMm, angleSetDeg, angleGotDeg.</summary>
internal static class BendTestsReader
{
    /// <summary>The test bends of a text.</summary>
    /// <exception cref="InputException">Names the text, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<BendTest> Read(InputText text)
    {
        IReadOnlyList<BendTest> tests = CsvTable.Read(text, Listing).Each(Test);
        return tests.Count >= SpringbackFit.Fewest
            ? tests
            : throw new InputException(
                text.Name, null, $"has {tests.Count} test bends: at least {SpringbackFit.Fewest} are needed for a fit");
    }

    private static BendTest Test(CsvRow row)
    {
        BendTest test = new()
        {
            InsideRadiusMm = row.Number(InsideRadiusMm),
            AngleSetDeg = row.Number(AngleSetDeg),
            AngleGotDeg = row.Number(AngleGotDeg),
        };
        return test.AngleGotDeg <= test.AngleSetDeg
            ? test
            : throw row.Fault(
                AngleGotDeg,
                InvariantText.Invariant($"{test.AngleGotDeg} is more than the {test.AngleSetDeg} it was formed to: allowed is less"));
    }
}
