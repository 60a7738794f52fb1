namespace FeltNest.Files.Workbooks;

/// <summary>What a cell of a workbook holds.</summary>
internal enum CellContent
{
    /// <summary>Nothing: a figure that is not given.</summary>
    Nothing,

    /// <summary>Words.</summary>
    Text,

    /// <summary>A number.</summary>
    Number,

    /// <summary>A formula.</summary>
    Formula,
}
