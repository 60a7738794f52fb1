using System.Globalization;
using System.Text;
using FeltNest.Cost.Sheet;
using FeltNest.Files;
using FeltNest.Files.Costs;
using FeltNest.Files.Dies;
using FeltNest.Files.Felts;
using FeltNest.Files.Fields;
using FeltNest.Files.Offers;
using FeltNest.Files.Orders;
using FeltNest.Files.Outlines;
using FeltNest.Files.Trials;
using FeltNest.Files.Usage;
using Xunit;

namespace FeltNest.Tests.Files;

/// <summary>A sound list that is spoiled in one column is refused there: every range, every column that must be there.</summary>
public sealed class SpoiledListTests
{
    private const string Folder = "demo";

    private static readonly Lazy<CostInputs> Costs = new(() => CostsReader.Read(RepositoryFile.PathOf("shapes", Folder, "costs.json")));

    private static readonly Dictionary<string, Func<InputText, object>> Readers = new()
    {
        ["offers"] = OffersReader.Read,
        ["actuals"] = text => ActualsReader.Read(text),
        ["orders"] = text => OrdersReader.Read(text, ["B"], ["F"]),
        ["stock"] = text => new StockReader(Costs.Value).Read(text),
        ["trial-readings"] = text => TrialReader.Read(text, FeltNest.Tests.Panel.Balls.Usual()),
        ["felt-readings"] = FeltReadingsReader.Read,
        ["readings"] = text => ReadingsReader.Read(text, 32),
        ["points"] = text => OutlineReader.Read(text),
    };

    private static string SoundTrial =>
        "ball,place,gapMm\n" + string.Concat(new[] { 1, 3, 5, 7, 9, 11, 13, 15 }.Select(place => $"A,{place},0.4\n"));

    public static TheoryData<string, string> Sound => new()
    {
        {
            "offers",
            "name,felt,widthMm,lengthM,price,priceUnit,currency,leastWidthMm,edgeMm,massPerAreaGsm,"
                + "faultPercent,minimumM,priceLow,priceHigh,deliveryDays\n"
                + "A,w,1500,50,18,m,EUR,1480,15,700,1,10,17,19,5\n"
        },
        { "actuals", "roll,metres,goodPanels,widthMm,endsM,faultPanels,rejectedPanels,unpairedPanels\nR,50,9000,1500,1,10,10,2\n" },
        { "orders", "order,ball,thousandBalls,due,reserveBalls,priority\nO,B,5,2026-03-31,10,2\n" },
        {
            "stock",
            "roll,felt,lot,widthMm,lengthM,price,priceUnit,currency,available,massPerAreaGsm,faultPercent\n"
                + "R,w,L,1500,50,18,m,EUR,yes,700,1\n"
        },
        { "trial-readings", SoundTrial },
        {
            "felt-readings",
            "felt,lot,date,test,specimen,direction,lengthMm,widthMm,forceN,extensionMm,narrowingMm\n"
                + "F,L,2026-03-31,strip,W1,warp,200,50,1.5,2,0.1\n"
        },
        { "readings", "date,strikes,cavity,ply,offMm,worstMm\n2026-03-31,100,1,top,0.1,0.2\n" },
        { "points", "u,v\n0,0\n10,0\n0,10\n" },
    };

    [Theory]
    [MemberData(nameof(Sound))]
    public void A_list_spoiled_in_one_column_is_refused_there(string name, string sound)
    {
        Listing listing = Documents.Lists.Single(one => one.Name == name);
        Readers[name](Text(sound));
        string[] names = sound.Split('\n')[0].Split(',');

        int count = 0;
        foreach (NumberField column in listing.Columns.All.OfType<NumberField>().Where(one => names.Contains(one.Name)))
        {
            int at = Array.IndexOf(names, column.Name);
            foreach (double bad in Beyond(column))
            {
                string spoiled = With(sound, at, bad.ToString("0.##################", CultureInfo.InvariantCulture));
                InputException error = Assert.Throws<InputException>(() => Readers[name](Text(spoiled)));
                Assert.Equal($"line 2, {column.Name}", error.Field);
                count++;
            }
        }

        Assert.True(count > 1);
    }

    [Theory]
    [MemberData(nameof(Sound))]
    public void A_list_without_a_column_that_is_required_is_refused(string name, string sound)
    {
        Listing listing = Documents.Lists.Single(one => one.Name == name);

        // A list of points may come without its line of names.
        foreach (string column in name == PointsListing.Listing.Name ? [] : listing.Required)
        {
            int at = Array.IndexOf(sound.Split('\n')[0].Split(','), column);
            string[] lines = [.. sound.TrimEnd().Split('\n').Select(line => string.Join(',', line.Split(',').Where((_, i) => i != at)))];
            InputException error = Assert.Throws<InputException>(() => Readers[name](Text(string.Join('\n', lines))));
            Assert.Contains($"the column {column} is missing", error.Message, StringComparison.Ordinal);
        }
    }

    private static IEnumerable<double> Beyond(NumberField column)
    {
        double step = column is WholeField ? 1 : Math.Max(1e-9, Math.Abs(column.Range.High) * 1e-9);
        return double.IsFinite(column.Range.High)
            ? [column.Range.Low - Math.Min(step, 1), column.Range.High + step]
            : [column.Range.Low - 1];
    }

    private static string With(string sound, int at, string value)
    {
        string[] lines = sound.Split('\n');
        string[] cells = lines[1].Split(',');
        cells[at] = value;
        lines[1] = string.Join(',', cells);
        return string.Join('\n', lines);
    }

    private static InputText Text(string text) => InputText.Of("list.csv", Encoding.UTF8.GetBytes(text));
}
