using FeltNest.Files;

namespace FeltNest.Runs.Book;

/// <summary>The lists that a plan is made from, as they are read.</summary>
internal sealed record ShopTexts
{
    /// <summary>Rolls in stock.</summary>
    public required InputText Stock { get; init; }

    /// <summary>Dies.</summary>
    public required InputText Dies { get; init; }

    /// <summary>Orders.</summary>
    public required InputText Orders { get; init; }
}
