using System.Text.Json;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Files.Costs;
using Xunit;

namespace FeltNest.Tests.Files.Costs;

public sealed class CostsReaderTests : IDisposable
{
    private const string Sound = """{ "schema": "feltnest/costs/1", "name": "n", "currency": "EUR","""
            + """ "roll": { "lengthM": 50, "endLossMm": 300, "faultPercent": 1.5, "rejectPercent": 0.5 } }""";

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_costs_of_the_demo_are_read_to_the_last_digit()
    {
        CostInputs costs = CostsReader.Read(RepositoryFile.PathOf("shapes", "demo", "costs.json"));

        Assert.Equal(
            ("EUR", 0.30m, 0.12m, 0.01m, 3.5m, 12m),
            (
                costs.Currency, costs.RecoveryPerKg, costs.PerStrike, costs.BoardPerStrike, costs.HandlingPerThousandBalls,
                costs.OverheadPercent));
        Assert.Equal(new FeltLosses
        {
            RollLengthM = 50,
            EndLossMm = 300,
            FaultPercent = 1.5,
            RejectPercent = 0.5,
            UnpairedPercent = 0.2,
            MostPanelsPerStrike = 60,
        }, costs.Losses);
        Assert.Equal(new DieCost { Price = 1900, LifeStrikes = 60_000, ReRules = 2, ReRulePrice = 700 }, costs.Die);
        Assert.Equal(new SetUpCost { Hours = 1.5m, RatePerHour = 38, BatchThousandBalls = 50 }, costs.SetUp);
        Assert.Equal(new FeltPrice(12.0m, PriceUnit.SquareMetre, "EUR"), costs.Felt);
        Assert.Equal(800, costs.MassPerAreaGsm);
        Assert.Equal(0.90m, costs.RateOf("USD"));
    }

    [Fact]
    public void A_figure_that_may_be_off_counts_as_its_likely_value()
    {
        CostInputs costs = Read(
            Sound.Replace(
                "\"faultPercent\": 1.5", "\"faultPercent\": { \"low\": 1, \"likely\": 1.5, \"high\": 2.25 }", StringComparison.Ordinal));

        Assert.Equal(1.5, costs.Losses.FaultPercent);
        Assert.Equal([new CostRange { Field = "roll.faultPercent", Low = 1m, High = 2.25m }], costs.Ranges);
    }

    [Fact]
    public void What_is_left_out_is_null_and_not_zero()
    {
        CostInputs costs = Read(Sound);

        Assert.Equal(
            (null, null, null, null, null, null),
            (costs.Felt, costs.RecoveryPerKg, costs.PerStrike, costs.Die, costs.SetUp, costs.OverheadPercent));
        Assert.Equal(new FeltLosses
        {
            RollLengthM = 50,
            EndLossMm = 300,
            FaultPercent = 1.5,
            RejectPercent = 0.5,
            UnpairedPercent = 0,
            MostPanelsPerStrike = null,
        }, costs.Losses);
    }

    [Theory]
    [InlineData("\"currency\": \"EUR\"", "\"currency\": \"E1\"", "currency: 'E1' is not allowed: 2 to 8 letters")]
    [InlineData("\"lengthM\": 50", "\"lengthM\": 0", "roll.lengthM: 0 is outside 0.1 to 100000")]
    [InlineData("\"lengthM\": 50", "\"lengthMm\": 50", "roll.lengthMm: is not a known field; did you mean 'lengthM'?")]
    [InlineData("\"faultPercent\": 1.5,", "", "roll.faultPercent: is missing")]
    [InlineData("\"faultPercent\": 1.5", "\"faultPercent\": \"1,5\"", "roll.faultPercent: is the text \"1,5\" where a number is wanted")]
    [InlineData("\"name\": \"n\"", "\"name\": \"n\", \"felt\": { \"price\": 3 }", "felt.priceUnit: is missing")]
    [InlineData(
        "\"name\": \"n\"", "\"name\": \"n\", \"felt\": { \"price\": 3, \"priceUnit\": \"kg\" }",
        "felt.massPerAreaGsm: is missing and the price is per kg")]
    [InlineData(
        "\"name\": \"n\"", "\"name\": \"n\", \"felt\": { \"price\": 3, \"priceUnit\": \"yd\" }",
        "felt.priceUnit: 'yd' is not known; allowed: m, m2, kg")]
    [InlineData(
        "\"name\": \"n\"", "\"name\": \"n\", \"rates\": [ { \"currency\": \"EUR\", \"rate\": 1 } ]",
        "rates[0].currency: EUR is the sheet's own currency")]
    [InlineData(
        "\"name\": \"n\"",
        "\"name\": \"n\", \"die\": { \"price\": 900, \"lifeStrikes\": 50000, \"reRules\": 2 }, \"strike\": { \"mostPanels\": 9 }",
        "die.reRulePrice: is missing")]
    [InlineData("\"name\": \"n\"", "\"name\": \"n\", \"strike\": { \"mostPanels\": 0 }", "strike.mostPanels: 0 is outside 1 to 10000")]
    [InlineData("\"name\": \"n\"", "\"name\": \"n\", \"strike\": { \"price\": 1 }", "strike.mostPanels: is missing")]
    [InlineData(
        "\"name\": \"n\"", "\"name\": \"n\", \"die\": { \"price\": 900, \"lifeStrikes\": 50000 }",
        "strike: is missing: a die is worn by strikes")]
    [InlineData("\"name\": \"n\"", "\"name\": \"n\", \"overheadPercent\": 1e40", "overheadPercent: 1E+40 is outside 0 to 1000")]
    [InlineData(
        "\"endLossMm\": 300", "\"endLossMm\": { \"low\": 400, \"likely\": 300, \"high\": 500 }",
        "roll.endLossMm.low: 400 is outside 0 to 300")]
    [InlineData("\"endLossMm\": 300", "\"endLossMm\": { \"low\": 200, \"likely\": 300 }", "roll.endLossMm.high: is missing")]
    [InlineData("\"endLossMm\": 300", "\"endLossMm\": { \"low\": 200, \"mid\": 300 }", "roll.endLossMm.mid: is not a known field")]
    [InlineData(
        "\"name\": \"n\"", "\"name\": \"n\", \"gang\": { \"cavities\": [4], \"diePricePerCavity\": 1 }",
        "gang: weighs dies by what they and their strikes cost")]
    [InlineData(
        "\"name\": \"n\"",
        "\"name\": \"n\", \"strike\": { \"price\": 1, \"mostPanels\": 9 }, \"die\": { \"price\": 9, \"lifeStrikes\": 9 }, \"gang\": { "
            + "\"cavities\": [8, 4], \"diePricePerCavity\": 1 }", "gang.cavities: 4 is not allowed")]
    [InlineData("costs/1", "costs/2", "schema: 'feltnest/costs/2' cannot be used here")]
    public void A_bad_field_is_named_with_its_value(string part, string instead, string problem)
    {
        string message = Assert.Throws<InputException>(() => Read(Sound.Replace(part, instead, StringComparison.Ordinal))).Message;
        Assert.Contains("costs.json: " + problem, message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', message);
    }

    [Fact]
    public void The_schema_knows_the_fields_of_the_demo()
    {
        JsonElement known = JsonDocument.Parse(
            File.ReadAllBytes(RepositoryFile.PathOf("shapes", "schema", "costs.schema.json"))).RootElement
            .GetProperty("properties");
        JsonElement demo = JsonDocument.Parse(File.ReadAllBytes(RepositoryFile.PathOf("shapes", "demo", "costs.json"))).RootElement;
        foreach (JsonProperty field in demo.EnumerateObject())
        {
            Assert.True(known.TryGetProperty(field.Name, out JsonElement inner), field.Name);
            if (field.Value.ValueKind == JsonValueKind.Object && inner.TryGetProperty("properties", out JsonElement fields))
            {
                Assert.All(field.Value.EnumerateObject(), f => Assert.True(fields.TryGetProperty(f.Name, out _), f.Name));
            }
        }
    }

    private CostInputs Read(string text)
    {
        string path = folder.Path("costs.json");
        File.WriteAllText(path, text);
        return CostsReader.Read(path);
    }
}
