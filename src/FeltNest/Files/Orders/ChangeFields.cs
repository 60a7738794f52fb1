using FeltNest.Files.Fields;
using FeltNest.Files.Json;
using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Files.Orders;

/// <summary>Fields of <c>changes[]</c> of a plan of orders.</summary>
internal static class ChangeFields
{
    internal static readonly FieldSet Set = new();

    public static readonly TextField Order = Set.Add(new TextField("order", "order"));
    public static readonly EnumField<ChangedThing> What = Set.Add(
        new EnumField<ChangedThing>("what", "what is changed: rolls, presses, dies, or the day of its last cover"));
    public static readonly TextField Before = Set.Add(
        new TextField("before", "what the plan before had for what is not cut yet"));
    public static readonly TextField After =
        Set.Add(new TextField("after", "what this plan has; null where it cuts nothing") { OrNull = true });
    public static readonly TextField Reason = Set.Add(new TextField("reason", "why, where the inputs tell it, else 'by the new plan'"));

    /// <summary>Reads one.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static PlanChange Read(JsonFields item) => new()
    {
        Order = item.Text(Order),
        What = item.Word(What),
        Before = item.Text(Before),
        After = item.OptionalText(After) ?? string.Empty,
        Reason = item.Text(Reason),
    };

    /// <summary>Writes one.</summary>
    public static void Write(JsonOutput item, PlanChange change) => item
        .Text(Order, change.Order)
        .Text(What, EnumWord.Of(change.What))
        .Text(Before, change.Before)
        .Text(After, change.After.Length == 0 ? null : change.After)
        .Text(Reason, change.Reason);
}
