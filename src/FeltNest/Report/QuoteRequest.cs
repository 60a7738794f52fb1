using System.Globalization;
using System.Security.Cryptography;
using FeltNest.Die;
using FeltNest.Die.Order;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>A request for a quote of a die: what, how many, how exact, with which files, and what the maker is asked to state.</summary>
internal static class QuoteRequest
{
    private const string Style =
        "body{font:16px/1.45 sans-serif;color:#25303b;max-width:52em;margin:2em auto;padding:0 1em}h1{font-size:1.4em}"
        + "h2{font-size:1.1em;margin:1.1em 0 .2em}table{border-collapse:collapse;width:100%}th,td{padding:.2em .6em;text-align:left;"
        + "border-bottom:1px solid #d9dcdd;vertical-align:top}td:nth-child(2){overflow-wrap:anywhere}"
        + "@page{size:A4;margin:14mm}@media print{body{margin:0;max-width:none;font-size:12px;padding:0}section{break-inside:avoid}}";

    private const string Blank = "________________";

    private static readonly string[] Asked =
    [
        "price of the die", "currency", "strikes to first re-ruling", "times to be ruled again",
        "price of each re-ruling", "days to delivery", "price holds until",
    ];

    /// <summary>The request as a page.</summary>
    /// <param name="design">The die.</param>
    /// <param name="files">The files that go with it, and their bytes.</param>
    public static byte[] Html(DieDesign design, IEnumerable<(string Name, byte[] Bytes)> files)
    {
        PageWriter page = new(Title(design), Style);
        Tell(page, design, files);
        return page.Bytes();
    }

    /// <summary>The request as plain text, to be sent in a letter.</summary>
    /// <param name="design">The die.</param>
    /// <param name="files">The files that go with it, and their bytes.</param>
    public static string Text(DieDesign design, IEnumerable<(string Name, byte[] Bytes)> files)
    {
        TextTable table = new();
        table.Heading(Title(design));
        Tell(table, design, files);
        return table.ToString();
    }

    private static string Title(DieDesign design) =>
        $"Request for a quote: {design.Request.Order.Name}"
            + $"{(design.Request.Order.Title.Revision is { } r ? $", revision {r}" : string.Empty)}";

    private static void Tell(IFindings findings, DieDesign design, IEnumerable<(string Name, byte[] Bytes)> files)
    {
        What(findings, design);
        Exact(findings, design.Request.Order);
        findings.Heading("Files, with their SHA-256");
        foreach ((string name, byte[] bytes) in files)
        {
            findings.Line(name, Convert.ToHexStringLower(SHA256.HashData(bytes)));
        }

        findings.Note("A file with another hash is not the one this request is about: ask before you make anything from it.");
        findings.Heading("Please state");
        foreach (string asked in Asked)
        {
            findings.Line(asked, Blank);
        }

        findings.Note(
            "Please state also what you cannot hold of the above, and your own rule, board and tolerances where they differ. Force, board, "
                + "ejection and safety are yours to confirm for the press named; local codes and the machine maker come first.");
    }

    private static void What(IFindings findings, DieDesign design)
    {
        DieOrder order = design.Request.Order;
        findings.Heading("What");
        findings.Line("dies", Invariant($"{order.Wishes.Quantity}"), order.Wishes.Replaces is { } old ? $"replaces {old}" : string.Empty);
        findings.Line("cavities of each", Invariant($"{design.Gang.Cavities.Count}"));
        findings.Line(
            "rule", Invariant($"{order.Rule.ThicknessMm:0.##} x {order.Rule.HeightMm:0.##} mm"),
            Invariant($"{order.Rule.Hardness}; {design.RuleLengthMm / 1000:0.00} m of middle line a die"));
        findings.Line("least radius of the edge", Invariant($"{design.LeastRadiusMm:0.##} mm"));
        findings.Line(
            "board", Invariant($"{design.Gang.BoardLengthMm:0.#} x {design.Gang.BoardWidthMm:0.#} x {order.Board.ThicknessMm:0.#} mm"),
            order.Board.Material);
        findings.Line("ejection", order.Ejection.Material);
        foreach ((string name, string? value) in ((string, string?)[])
            [
                ("mounting", order.Wishes.Mounting), ("registration", order.Wishes.Registration), ("air holes", order.Wishes.AirHoles),
                ("marks", order.Wishes.CavityMarks),
            ])
        {
            findings.Line(name, value ?? Blank);
        }

        findings.Line(
            "felt", Invariant($"{order.FeltThicknessMm:0.##} mm, {order.Plies} {(order.Plies == 1 ? "ply" : "plies")}"));
        findings.Line(
            "press", design.Request.Press is { } press ? press.Name : "to be agreed",
            Invariant($"force estimated {design.Force.Kn:0} kN, {Basis(order.Force.Basis)}"));
    }

    private static string Basis(ForceBasis basis) =>
        basis == ForceBasis.Measured ? "from a measured force per mm" : "from a placeholder: not measured, do not rely on it";

    private static void Exact(IFindings findings, DieOrder order)
    {
        findings.Heading("How exact");
        string half(double zone) => (zone / 2).ToString("0.###", CultureInfo.InvariantCulture);
        findings.Line(
            "profile of the edge", Invariant($"{order.Tolerances.EdgeProfileMm:0.###} mm"),
            $"ISO 1101: {half(order.Tolerances.EdgeProfileMm)} mm to each side");
        findings.Line(
            "position of each cavity", Invariant($"{order.Tolerances.PositionMm:0.###} mm"), "diameter of the circle round its place");
        findings.Line(
            "profile of a cut panel", Invariant($"{order.Tolerances.PanelProfileMm:0.###} mm"), order.Wishes.JudgedBy ?? string.Empty);
        findings.Line("board and plate", $"ISO 2768-1, class {order.Tolerances.General}");
    }
}
