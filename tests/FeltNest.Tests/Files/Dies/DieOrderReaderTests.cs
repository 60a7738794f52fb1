using System.Text.Json.Nodes;
using FeltNest.Die.Order;
using FeltNest.Files.Dies;
using Xunit;

namespace FeltNest.Tests.Files.Dies;

public sealed class DieOrderReaderTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_order_of_the_demo_is_read()
    {
        DieOrder order = Read(_ => { });

        Assert.Equal((0.71, 23.8, RuleBevel.SideWaste), (order.Rule.ThicknessMm, order.Rule.HeightMm, order.Rule.Bevel));
        Assert.Equal(ForceBasis.Placeholder, order.Force.Basis);
        Assert.Equal("A", order.Title.Revision);
        Assert.Equal(5.8, order.CavityDepthMm, 9);
        Assert.False(order.DieView || order.ThirdAngle || order.CommonCut);
    }

    [Fact]
    public void What_is_left_out_has_its_stated_default()
    {
        DieOrder order = Read(root =>
        {
            foreach (string name in new[] { "view", "projection", "title", "order", "wear", "commonCut" })
            {
                root.Remove(name);
            }

            JsonObject force = (JsonObject)root["force"]!;
            force.Remove("ejectionPercent");
            force.Remove("reservePercent");
            force.Remove("closeMm");
        });

        Assert.Equal((15, 25, 6.35), (order.Force.EjectionPercent, order.Force.ReservePercent, order.Force.CloseMm));
        Assert.Null(order.Title.Title);
        Assert.Null(order.Wear);
        Assert.Equal(1, order.Wishes.Quantity);
    }

    // Limits of ISO 7200:2004 as a help page reproduces its table of fields.
    [Theory]
    [InlineData("identificationNumber", 16)]
    [InlineData("dateOfIssue", 10)]
    [InlineData("approvalPerson", 20)]
    [InlineData("creator", 20)]
    [InlineData("documentType", 30)]
    [InlineData("title", 25)]
    [InlineData("supplementaryTitle", 25)]
    [InlineData("revision", 2)]
    [InlineData("language", 4)]
    [InlineData("department", 10)]
    [InlineData("technicalReference", 20)]
    [InlineData("status", 20)]
    public void A_title_field_may_be_as_long_as_the_standard_lets_it(string field, int most)
    {
        Assert.NotNull(Read(root => root["title"]![field] = new string('x', most)));
        InputException error = Assert.Throws<InputException>(() => Read(root => root["title"]![field] = new string('x', most + 1)));
        Assert.Contains($"title.{field}: ", error.Message, StringComparison.Ordinal);
        Assert.Contains($"has {most + 1} letters: at most {most}", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Eight_fields_of_a_title_block_are_mandatory() => Assert.Equal(8, DieTitle.Limits.Count(l => l.Mandatory));

    [Theory]
    [InlineData("rule", "thicknessMm", "9", "rule.thicknessMm: 9 is outside 0.3 to 8")]
    [InlineData("rule", "bevel", "\"side\"", "rule.bevel: 'side' is not known")]
    [InlineData("tolerances", "panelProfileMm", "0.3", "tolerances.panelProfileMm: 0.3 is below edgeProfileMm 0.5")]
    [InlineData("tolerances", "general", "\"x\"", "tolerances.general: 'x' is not known")]
    [InlineData("force", "basis", "\"guess\"", "force.basis: 'guess' is not known")]
    [InlineData("felt", "plies", "0", "felt.plies: 0 is outside 1 to 100")]
    [InlineData("wear", "currency", "\"1\"", "wear.currency: '1' is not allowed: 2 to 8 letters, such as EUR")]
    public void Bad_values_are_told_with_field_and_range(string part, string field, string value, string told) =>
        Assert.Contains(
            told, Assert.Throws<InputException>(() => Read(root => root[part]![field] = JsonNode.Parse(value))).Message,
            StringComparison.Ordinal);

    // ISO 2768-1:1989, linear, as independent pages reproduce it (f and m); c from memory.
    [Theory]
    [InlineData("f", 3, 0.05)]
    [InlineData("f", 6, 0.05)]
    [InlineData("f", 30, 0.1)]
    [InlineData("f", 120, 0.15)]
    [InlineData("f", 400, 0.2)]
    [InlineData("f", 1000, 0.3)]
    [InlineData("f", 2000, 0.5)]
    [InlineData("m", 0.5, 0.1)]
    [InlineData("m", 6.1, 0.2)]
    [InlineData("m", 31, 0.3)]
    [InlineData("m", 121, 0.5)]
    [InlineData("m", 401, 0.8)]
    [InlineData("m", 1001, 1.2)]
    [InlineData("m", 4000, 2)]
    [InlineData("c", 3, 0.2)]
    [InlineData("c", 5, 0.3)]
    [InlineData("c", 4000, 4)]
    [InlineData("v", 5, 0.5)]
    [InlineData("v", 4000, 8)]
    public void General_tolerances_are_those_of_the_standard(string grade, double length, double tolerance) =>
        Assert.Equal(tolerance, GeneralTolerances.Linear(grade, length));

    [Fact]
    public void Lengths_outside_the_table_have_no_general_tolerance()
    {
        Assert.Null(GeneralTolerances.Linear("m", 0.4));
        Assert.Null(GeneralTolerances.Linear("f", 2001));
        Assert.Null(GeneralTolerances.Linear("v", 2));
    }

    private DieOrder Read(Action<JsonObject> change)
    {
        JsonObject root = (JsonObject)JsonNode.Parse(File.ReadAllText(RepositoryFile.PathOf("shapes", "demo", "dies", "gang-die.json")))!;
        change(root);
        File.WriteAllText(folder.Path("order.json"), root.ToJsonString());
        return DieOrderReader.Read(folder.Path("order.json"));
    }
}
