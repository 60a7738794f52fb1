namespace FeltNest.Book;

/// <summary>What an entry is about.</summary>
internal enum SubjectKind
{
    /// <summary>A roll of felt.</summary>
    Roll,

    /// <summary>A die.</summary>
    Die,

    /// <summary>An order.</summary>
    Order,

    /// <summary>A cutting ticket.</summary>
    Ticket,

    /// <summary>A plan of orders.</summary>
    Plan,

    /// <summary>The standard of a ball.</summary>
    Standard,

    /// <summary>A list, by its hash.</summary>
    List,

    /// <summary>An act of the book.</summary>
    Act,
}
