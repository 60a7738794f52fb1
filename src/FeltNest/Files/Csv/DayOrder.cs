namespace FeltNest.Files.Csv;

/// <summary>Order of day, month and year in a list whose days are not written year first.</summary>
internal enum DayOrder
{
    /// <summary>Day, month, year: 31.03.2026.</summary>
    Dmy,

    /// <summary>Month, day, year: 3/31/2026.</summary>
    Mdy,
}
