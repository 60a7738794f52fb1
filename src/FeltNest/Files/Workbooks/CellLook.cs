namespace FeltNest.Files.Workbooks;

/// <summary>How a cell of a workbook looks; the order is that of the styles in the file.</summary>
internal enum CellLook
{
    /// <summary>As it is.</summary>
    Plain,

    /// <summary>A name over cells.</summary>
    Heading,

    /// <summary>A figure to be changed by hand.</summary>
    Input,

    /// <summary>Money, to the cent.</summary>
    Money,

    /// <summary>A quantity, to a thousandth.</summary>
    Quantity,

    /// <summary>A total of money.</summary>
    Total,

    /// <summary>Text that begins like a formula and is none.</summary>
    Quoted,

    /// <summary>Such text that may be changed by hand.</summary>
    QuotedInput,
}
