using System.Text;
using CsCheck;
using FeltNest.Files.Csv;
using FeltNest.Files.Offers;
using Xunit;

namespace FeltNest.Tests.Files;

/// <summary>Cells that a spreadsheet would run are written as harmless text, and our own readers get back what was meant.</summary>
public sealed class CellTextTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("=HYPERLINK(\"x\")", "'=HYPERLINK(\"x\")")]
    [InlineData("+1+1", "'+1+1")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("-2+3", "'-2+3")]
    [InlineData("\t=1", "'\t=1")]
    [InlineData("\r=1", "'\r=1")]
    [InlineData("'=1", "''=1")]
    [InlineData("\t5", "'\t5")]
    public void A_cell_that_a_spreadsheet_would_run_gets_an_apostrophe(string text, string cell) =>
        Assert.Equal(cell, CellText.Harmless(text));

    [Theory]
    [InlineData("-3.5")]
    [InlineData("+2")]
    [InlineData("-1e-9")]
    [InlineData("Birch")]
    [InlineData("a=b")]
    [InlineData("'twas")]
    [InlineData("")]
    public void Numbers_keep_their_sign_and_other_texts_stay(string text) => Assert.Equal(text, CellText.Harmless(text));

    [Fact]
    public void Any_text_is_read_back_as_it_was() => Gen.Char["='+-@\ta1."].Array[0, 6].Select(all => new string(all)).Sample(
        text => Assert.Equal(text, CellText.Meant(CellText.Harmless(text))), iter: 2000);

    [Fact]
    public void A_line_written_holds_no_cell_that_a_spreadsheet_would_run_whatever_its_list_separator()
    {
        string line = Encoding.UTF8.GetString(new CsvText().Line("=1+1", "lot;=2+2", "-4").Finish());

        Assert.Equal("'=1+1,\"lot;=2+2\",-4\n", line);
    }

    [Fact]
    public void An_offer_named_like_a_formula_keeps_its_name_through_a_written_list()
    {
        byte[] list = new CsvText()
            .Line("name", "felt", "widthMm", "lengthM", "price", "priceUnit", "currency")
            .Line("=cmd", "@felt", "1500", "30", "20", "m", "EUR").Finish();
        string path = folder.Write("offers.csv", Encoding.UTF8.GetString(list));

        Assert.Contains("'=cmd", Encoding.UTF8.GetString(list), StringComparison.Ordinal);
        Assert.Equal("=cmd", Assert.Single(OffersReader.Read(path)).Name);
    }
}
