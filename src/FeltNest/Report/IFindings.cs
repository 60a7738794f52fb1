namespace FeltNest.Report;

/// <summary>Where a report says what was found: a terminal or a page. What is said is written once.</summary>
internal interface IFindings
{
    /// <summary>Begins a new part.</summary>
    public void Heading(string words);

    /// <summary>A name and a value.</summary>
    public void Line(string name, string value, string remark = "");

    /// <summary>A sentence.</summary>
    public void Note(string words);

    /// <summary>A table.</summary>
    public void Table(FindingTable table);
}
