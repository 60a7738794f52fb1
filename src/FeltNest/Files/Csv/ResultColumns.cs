using System.Globalization;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Csv;

/// <summary>The columns of a CSV result: each is described once, together with what stands in it. The file and the reference page come from
/// here.</summary>
/// <typeparam name="T">What one line is about.</typeparam>
internal sealed class ResultColumns<T>
{
    private readonly FieldSet fields = new();
    private readonly List<Func<T, string>> cells = [];

    /// <summary>Columns of a file, none yet.</summary>
    /// <param name="file">Name of the file: <c>usage.csv</c>.</param>
    public ResultColumns(string file) => Listing = new Listing(file, fields);

    /// <summary>The columns as the reference page tells them.</summary>
    public Listing Listing { get; }

    /// <summary>A column of texts.</summary>
    public ResultColumns<T> Text(TextField column, Func<T, string?> cell) => Add(column, row => cell(row) ?? string.Empty);

    /// <summary>A column of numbers, with all their digits.</summary>
    public ResultColumns<T> Number(NumberField column, Func<T, double?> cell) => Add(column, row => CsvText.Number(cell(row)));

    /// <summary>A column of whole numbers.</summary>
    public ResultColumns<T> Whole(WholeField column, Func<T, int?> cell) =>
        Add(column, row => cell(row)?.ToString(CultureInfo.InvariantCulture) ?? string.Empty);

    /// <summary>A column of money, to a millionth.</summary>
    public ResultColumns<T> Money(NumberField column, Func<T, decimal?> cell) => Add(column, row => CsvText.Money(cell(row)));

    /// <summary>A column that says yes or no.</summary>
    public ResultColumns<T> Flag(string name, Func<T, bool> cell, string meaning) =>
        Add(new WordField(name, ["yes", "no"], meaning), row => cell(row) ? "yes" : "no");

    /// <summary>The file's bytes: a line of names, then one line for each of the rows.</summary>
    public byte[] Csv(IEnumerable<T> rows)
    {
        CsvText text = new CsvText().Line(fields.Names);
        foreach (T row in rows)
        {
            text.Line(cells.Select(cell => cell(row)));
        }

        return text.Finish();
    }

    private ResultColumns<T> Add(Field column, Func<T, string> cell)
    {
        fields.Add(column);
        cells.Add(cell);
        return this;
    }
}
