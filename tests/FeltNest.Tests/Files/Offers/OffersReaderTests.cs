using System.Text;
using FeltNest.Cost.Offers;
using FeltNest.Files.Offers;
using Xunit;

namespace FeltNest.Tests.Files.Offers;

public sealed class OffersReaderTests : IDisposable
{
    private const string Head = "name,felt,widthMm,lengthM,price,priceUnit,currency";

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_offers_of_the_demo_are_read_to_the_last_digit()
    {
        IReadOnlyList<FeltOffer> offers = OffersReader.Read(RepositoryFile.PathOf("shapes", "demo", "offers.csv"));

        Assert.Equal(3, offers.Count);
        Assert.Equal(
            new FeltOffer
            {
                Name = "Birch 1370",
                Felt = "woven B (invented)",
                WidthMm = 1370,
                LengthM = 60,
                Price = new FeltPrice(12.10m, PriceUnit.SquareMetre, "EUR"),
                LeastWidthMm = 1360,
                EdgeMm = 12,
                MassPerAreaGsm = 800,
                MassBasis = "bare",
                FaultPercent = 2.5,
                MinimumM = 600,
                FreightPerRoll = 18,
                CreditDays = 60,
                DeliveryDays = 21,
                Lot = "B-7",
            }, offers[1]);
        Assert.Equal([new PriceTier(10_000, 17.90m), new PriceTier(30_000, 17.50m)], offers[0].Tiers);
        Assert.Equal((4m, 1600d), (offers[2].DutyPercent, offers[2].InvoicedWidthMm));
        Assert.Equal((PriceUnit.Kilogram, "USD", 1600d), (offers[2].Price.Unit, offers[2].Price.Currency, offers[2].PlannedWidthMm));
    }

    [Theory]
    [InlineData("name,felt,widthMm,lengthM,price,priceUnit,currency\nA,f,1500,50,18.4,m,EUR\n")]
    [InlineData("name;felt;widthMm;lengthM;price;priceUnit;currency\nA;f;1500;50;18,4;m;EUR\n")]
    [InlineData("\r\nname;felt;widthMm;lengthM;price;priceUnit;currency\r\n\r\n\"A\";\"f\";1500;50;\"18,4\";m;EUR\r\n;;;;;;\r\n")]
    [InlineData("currency,priceUnit,price,lengthM,widthMm,felt,name\nEUR,m,18.4,50,1500,f, A ")]
    public void Separators_quotes_line_ends_blank_lines_and_the_order_of_columns_do_not_matter(string text)
    {
        FeltOffer expected = new()
        {
            Name = "A",
            Felt = "f",
            WidthMm = 1500,
            LengthM = 50,
            Price = new FeltPrice(18.4m, PriceUnit.Metre, "EUR"),
            LeastWidthMm = null,
            EdgeMm = null,
            MassPerAreaGsm = null,
            MassBasis = null,
            FaultPercent = null,
            MinimumM = null,
            Lot = null,
        };
        Assert.Equal(expected, Assert.Single(Read(text)));
        Assert.Equal(
            expected, Assert.Single(OffersReader.Read(File(Encoding.UTF8.GetPreamble().Concat(Encoding.UTF8.GetBytes(text)).ToArray()))));
    }

    [Theory]
    [InlineData("1000")]
    [InlineData("1000:17,9")]
    [InlineData("1000:17.9 900:17")]
    [InlineData("0:17")]
    [InlineData("1000:0")]
    [InlineData("1000:-3")]
    public void Tiers_that_make_no_sense_are_told_with_line_and_what_is_allowed(string tiers)
    {
        InputException error = Assert.Throws<InputException>(() => Read($"{Head},tiers\nA,f,1500,50,18.4,m,EUR,\"{tiers}\"\n"));

        Assert.Contains("line 2, tiers", error.Message, StringComparison.Ordinal);
        Assert.Contains("such as 1000:17.90 3000:17.40", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Square_metres_may_be_written_with_a_raised_2() =>
        Assert.Equal(PriceUnit.SquareMetre, Assert.Single(Read(Head + "\nA,f,1500,50,18.4,m\u00B2,EUR\n")).Price.Unit);

    [Fact]
    public void A_quoted_field_keeps_separators_and_doubled_quotes() =>
        Assert.Equal("felt, \"thick\"", Assert.Single(Read(Head + "\nA,\"felt, \"\"thick\"\"\",1500,50,18.4,m,EUR")).Felt);

    [Theory]
    [InlineData("A,f,1500,50,18.4,,EUR", "line 2, priceUnit: '' is not allowed: m, m2, kg")]
    [InlineData(
        "A,f,1500,50,18.4,kg,EUR", "line 2, massPerAreaGsm: is blank and the price is per kg: give the mass of the felt as it is bought")]
    [InlineData("A,f,1500,50,18.4,yd,EUR", "line 2, priceUnit: 'yd' is not allowed: m, m2, kg")]
    [InlineData("A,f,1500,50,18.4,m,EUR\n\nA,f,1500,50,18.4,m,EUR", "line 4, name: 'A' stands in the list twice")]
    [InlineData("A,f,15oo,50,18.4,m,EUR", "line 2, widthMm: '15oo' is not a number: write 12.5")]
    [InlineData("A,f,,50,18.4,m,EUR", "line 2, widthMm: is blank: a number is wanted")]
    [InlineData("A,f,1500,-5,18.4,m,EUR", "line 2, lengthM: -5 is outside 0.1 to 100000 m")]
    [InlineData("A,f,1500,50,18,4,m,EUR", "line 2: has 8 values where the line of names has 7; are these decimal commas?")]
    [InlineData("A,f,1500,50,\"18,4\",m,EUR", "line 2, price: '18,4' has a comma")]
    [InlineData("A,f,1500,50,0,m,EUR", "line 2, price: 0 is outside 0.0001")]
    [InlineData("A,f,1500,50,18.4,m,€", "line 2, currency: '€' is not allowed: 2 to 8 letters")]
    [InlineData("A,f,1500,50,18.4,m", "line 2: has 6 values where the line of names has 7")]
    [InlineData(",f,1500,50,18.4,m,EUR", "line 2, name: is blank")]
    [InlineData("\"A,f,1500,50,18.4,m,EUR", "line 2: '\"A,f,1500,50,18.4,m,EUR' has an opening quote without a closing one")]
    [InlineData("\"A\"b,f,1500,50,18.4,m,EUR", "has letters behind a closing quote")]
    public void A_bad_line_is_named_with_its_column_and_value(string lines, string problem) => Refused(Head + "\n" + lines, problem);

    [Theory]
    [InlineData("name,felt,widthMm,lengthM,price,currency\nA,f,1,1,1,EUR", "line 1: the column priceUnit is missing")]
    [InlineData(
        "name,felt,widthMm,lengthM,price,priceUnit,currency,edgeMn\nA,f,1,1,1,m,EUR,1",
        "line 1: the column 'edgeMn' is not known; did you mean 'edgeMm'?")]
    [InlineData(
        "name,felt,widthMm,lengthM,price,priceUnit,currency,lot,lot\nA,f,1,1,1,m,EUR,1,2", "line 1: the column 'lot' stands there twice")]
    [InlineData("name,felt,widthMm,lengthM,price,priceUnit,currency\n\n", "holds a line of names and nothing below it")]
    [InlineData("\n \n", "holds no lines")]
    [InlineData(
        "name,felt,widthMm,lengthM,price,priceUnit,currency,leastWidthMm\nA,f,1480,50,1,m,EUR,1500",
        "line 2, leastWidthMm: 1500 is above the nominal width of 1480 mm")]
    [InlineData(
        "name;felt;widthMm;lengthM;price;priceUnit;currency\nA;f;1500;50,5;18.4;m;EUR",
        "line 2, price: '18.4' has a decimal '.' where line 2 has a decimal ','")]
    [InlineData(
        "name;felt;widthMm;lengthM;price;priceUnit;currency\nA;f;1.500,0;50;18,4;m;EUR",
        "line 2, widthMm: '1.500,0' has a comma: write 1250.5 without thousands")]
    public void A_bad_table_is_named_with_its_line(string text, string problem) => Refused(text, problem);

    [Fact]
    public void Text_in_another_code_is_refused_in_words() => Assert.Contains(
        "is not UTF-8",
        Assert.Throws<InputException>(() => OffersReader.Read(File([.. Encoding.UTF8.GetBytes(Head + "\n"), 0xE9, 0x2C]))).Message,
        StringComparison.Ordinal);

    private void Refused(string text, string problem)
    {
        string message = Assert.Throws<InputException>(() => Read(text)).Message;
        Assert.Contains(
            "offers.csv: " + (problem.StartsWith("has letters", StringComparison.Ordinal) ? string.Empty : problem), message,
            StringComparison.Ordinal);
        Assert.Contains(problem, message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', message);
    }

    private IReadOnlyList<FeltOffer> Read(string text) => OffersReader.Read(File(Encoding.UTF8.GetBytes(text)));

    private string File(byte[] bytes)
    {
        string path = folder.Path("offers.csv");
        System.IO.File.WriteAllBytes(path, bytes);
        return path;
    }
}
