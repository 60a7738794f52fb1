using System.CommandLine;

namespace FeltNest.Cli.Commands.Book;

/// <summary><c>book VERB --book BOOK</c>: what happened in the cutting room, written down and never overwritten.</summary>
internal static class BookCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Terminal terminal)
    {
        Command command = new(
            "book",
            "The cutting room's book: rolls, dies, orders and tickets, what happened to them, and what is left of them.");
        foreach (Command verb in (Command[])
        [
            .. FileVerbs.All(terminal), .. ListVerbs.All(terminal), .. TicketVerbs.All(terminal), .. RollVerbs.All(terminal),
            .. DieVerbs.All(terminal), StandardVerb.Create(terminal),
        ])
        {
            command.Add(verb);
        }

        return command;
    }
}
