using FeltNest.Die;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using Xunit;

namespace FeltNest.Tests.Drawing;

/// <summary>The ticket of a cutting room on its A4 sheet.</summary>
public sealed class TicketSheetTests
{
    // The box goes from 20 to 200 mm across the sheet; words begin 2 mm inside it.
    [Fact]
    public void Every_caution_stays_inside_its_box() =>
        Assert.All(SafetyWords.Ticket, line => Assert.InRange(StrokeFont.Width(line, Ink.Note), 100, 176));
}
