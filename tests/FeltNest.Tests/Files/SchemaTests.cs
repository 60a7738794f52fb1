using System.Text.Json;
using FeltNest.Files.Layouts;
using FeltNest.Files.Panels;
using FeltNest.Layout.Check;
using FeltNest.Tests.Drawing;
using Xunit;

namespace FeltNest.Tests.Files;

/// <summary>What is shipped and what is written fits the published schemas.</summary>
public sealed class SchemaTests
{
    [Fact]
    public void Every_shipped_document_fits_its_schema()
    {
        string shapes = RepositoryFile.PathOf("shapes");
        string[] files =
        [
            .. Directory.GetFiles(shapes, "*.json", SearchOption.AllDirectories)
                .Where(file => !file.EndsWith(".schema.json", StringComparison.Ordinal)),
        ];

        Assert.True(files.Length > 10);
        Assert.All(files, file =>
        {
            JsonElement document = SchemaFile.Parsed(File.ReadAllBytes(file));
            string kind = document.GetProperty("schema").GetString()!.Split('/')[1];
            Assert.Null(SchemaFile.Misfit(kind, document));
        });
    }

    [Fact]
    public void Layouts_panels_and_verdicts_fit_their_schemas()
    {
        Fits("layout", LayoutWriter.Write(SampleLayout.OneRepeat, SampleLayout.Yields));
        Fits("layout", LayoutWriter.Write(SampleLayout.TwoBands, SampleLayout.Yields));
        Fits("panel", PanelWriter.Write(SamplePanel.Ball, SamplePanel.Panel));
        Fits("panel", PanelWriter.Write(SamplePanel.Ball, SamplePanel.Held));
        Fits("check", CheckWriter.Write(new CheckVerdict(double.NaN, 0, ["too near"])));
        Fits("check", CheckWriter.Write(LayoutCheck.Verify(SampleLayout.OneRepeat)));
    }

    private static void Fits(string schema, byte[] json) => Assert.Null(SchemaFile.Misfit(schema, json));
}
