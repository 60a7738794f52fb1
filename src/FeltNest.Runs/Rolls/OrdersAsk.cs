using FeltNest.Files.Csv;
using FeltNest.Rolls.Orders;
using FeltNest.Runs.Book;

namespace FeltNest.Runs.Rolls;

/// <summary>Which orders are to be cut from what.</summary>
internal sealed record OrdersAsk
{
    /// <summary>List of orders; null where a book says it.</summary>
    public string? OrdersFile { get; init; }

    /// <summary>List of rolls in stock; null where a book says it.</summary>
    public string? StockFile { get; init; }

    /// <summary>List of dies; null where a book says it.</summary>
    public string? DiesFile { get; init; }

    /// <summary>The lists out of the cutting room's book, or null for those of files.</summary>
    public BookLists? Book { get; init; }

    /// <summary>Files of the presses.</summary>
    public required IReadOnlyList<string> PressFiles { get; init; }

    /// <summary>List of felt that can be bought, or null.</summary>
    public string? OffersFile { get; init; }

    /// <summary>File of costs, or null.</summary>
    public string? CostsFile { get; init; }

    /// <summary>List of calendars of presses, or null.</summary>
    public string? CalendarFile { get; init; }

    /// <summary>A plan of which some is cut, or null.</summary>
    public string? FromPlanFile { get; init; }

    /// <summary>List of what is cut of that plan, or null for nothing.</summary>
    public string? DoneFile { get; init; }

    /// <summary>How the lists are read.</summary>
    public ListReading Lists { get; init; } = new();

    /// <summary>First day of cutting.</summary>
    public required DateOnly Start { get; init; }

    /// <summary>Hours a press without a calendar runs on a working day.</summary>
    public required double HoursPerDay { get; init; }

    /// <summary>Worth of felt that goes back to stock, per cent of its price.</summary>
    public required double RemnantValuePercent { get; init; }

    /// <summary>Shortest remnant that goes back to stock, m.</summary>
    public required double LeastRemnantM { get; init; }

    /// <summary>Shortest piece of a roll worth the handling, m.</summary>
    public required double LeastCutM { get; init; }

    /// <summary>What is done with rolls whose nap lies against the feed where a layout is one-way.</summary>
    public NapHandling Nap { get; init; } = NapHandling.Turn;

    /// <summary>Folder of the results: paths in them are seen from it.</summary>
    public string OutFolder { get; init; } = ".";

    /// <summary>Counted work.</summary>
    public required int Effort { get; init; }
}
