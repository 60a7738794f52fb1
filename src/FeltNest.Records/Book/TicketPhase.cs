namespace FeltNest.Book;

/// <summary>How far a ticket is.</summary>
internal enum TicketPhase
{
    /// <summary>Printed, nothing came back.</summary>
    Open,

    /// <summary>Some of its strikes are made.</summary>
    Begun,

    /// <summary>All is cut that will be.</summary>
    Cut,
}
