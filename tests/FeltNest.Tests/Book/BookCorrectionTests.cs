using System.Text.Json.Nodes;
using FeltNest.Tests.Cli;
using Xunit;

namespace FeltNest.Tests.Book;

/// <summary>Entries corrected and acts taken back at the command line.</summary>
public sealed class BookCorrectionTests : BookShop
{
    [Fact]
    public async Task Only_its_own_hand_takes_an_act_back_without_being_asked()
    {
        await Furnished();

        CommandRun other = await CommandRun.Of("book", "undo", "--book", Desk.Path("room.db"), "--by", "otto", "--at", "2026-03-02");
        CommandRun own = await Book("undo", "--why", "wrong list");

        Assert.Equal("feltnest: --sure: the last act, entry 5 (list brought in), is by anna: give this to take it back all the same",
            Assert.Single(other.Messages));
        Assert.Equal("entry 8 takes back entry 5 (list brought in) and 2 entries with it\n", own.Out);
        Assert.Equal("[]\n", (await Show("orders", "--json")).Out);
    }

    [Theory]
    [InlineData("--set: strikez=5 does not fit this entry", "strikez=5")]
    [InlineData("--set: balls follows from the other fields", "balls=5")]
    [InlineData("--set: strikes=-5 is below 0", "strikes=-5")]
    [InlineData("--set: strikes=many does not fit this entry", "strikes=many")]
    [InlineData("--set: strikes=1.5 does not fit this entry", "strikes=1.5")]
    public async Task A_correction_that_cannot_be_is_refused(string problem, string set)
    {
        await Furnished();
        await Plan("first", "--take");
        await Book("ticket", "1", "--strikes", "400");

        CommandRun run = await Book("correct", "12", "--set", set, "--why", "typed wrong");

        Assert.Equal(2, run.Code);
        Assert.Contains(problem, Assert.Single(run.Messages), StringComparison.Ordinal);
        Assert.Equal(0, (await Book("correct", "12", "--set", "strikes=401", "--why", "typed wrong")).Code);
    }

    [Fact]
    public async Task The_balls_of_an_order_are_corrected_as_they_were_typed()
    {
        await Furnished();

        CommandRun run = await Book("correct", "6", "--set", "balls=450", "--why", "typed wrong");

        Assert.True(run.Code == 0, run.Err);
        Assert.Equal(450, (int)JsonNode.Parse((await Show("orders", "--json")).Out)![0]!["left"]!);
    }

    // What no list could bring in would stop the next plan.
    [Theory]
    [InlineData(2, "widthMm=0")]
    [InlineData(2, "lengthM=1000000000")]
    [InlineData(2, "priceUnit=yard")]
    [InlineData(2, "currency=?")]
    [InlineData(2, "received=1.3.2026")]
    [InlineData(2, "felt=")]
    [InlineData(4, "strikesLeft=2000000000")]
    [InlineData(6, "due=tomorrow")]
    [InlineData(6, "due=")]
    [InlineData(6, "balls=0")]
    [InlineData(6, "day=2026-02-30")]
    public async Task A_correction_to_what_no_list_could_bring_in_is_refused(int entry, string set)
    {
        await Furnished();

        CommandRun run = await Book("correct", $"{entry}", "--set", set, "--why", "typed wrong");

        Assert.Equal(2, run.Code);
        Assert.StartsWith("feltnest: --set: " + set, Assert.Single(run.Messages), StringComparison.Ordinal);
        Assert.Equal(0, (await Book("correct", "6", "--set", "due=2026-03-05", "--why", "moved")).Code);
        Assert.Equal(0, (await Book("correct", "2", "--set", "received=", "--set", "widthMm=20.1", "--why", "measured")).Code);
    }
}
