using FeltNest.Cost.Tickets;
using FeltNest.Files.Csv;
using FeltNest.Files.Fields;
using static FeltNest.Files.Usage.PeriodDocument;

namespace FeltNest.Files.Usage;

/// <summary>Columns of the <c>usage.csv</c> of a period: a line for each group and cause.</summary>
internal static class PeriodListing
{
    public static readonly ResultColumns<Line> Columns = new ResultColumns<Line>("usage.csv of a book")
        .Text(new TextField("group", "roll, press, week ...; whole where all are together"), l => l.Group.Name)
        .Text(CauseFields.Cause, l => EnumWord.Of(l.Part.Cause))
        .Number(CauseFields.SquareMetres, l => (double)l.Part.M2)
        .Number(
            new NumberField("percentOfStandard", "of the group's standard felt"),
            l => (double)(100 * l.Part.M2 / l.Group.StandardM2))
        .Money(CauseFields.Money, l => l.Part.Money)
        .Text(PeriodDocument.Currency, l => l.Currency)
        .Whole(GroupFields.Tickets, l => l.Group.Tickets.Count)
        .Number(GroupFields.Balls, l => (double)l.Group.Balls);

    /// <summary>One cause of a group.</summary>
    internal sealed record Line(TicketGroup Group, TicketPart Part, string Currency);
}
