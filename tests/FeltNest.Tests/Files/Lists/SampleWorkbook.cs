using System.IO.Compression;
using System.Text;

namespace FeltNest.Tests.Files.Lists;

/// <summary>Workbooks made part by part, sound and otherwise. Style 1 is a day, 2 a day with a time, 3 per cent, 4 four digits.</summary>
internal static class SampleWorkbook
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    private const string Styles = $"""
        <styleSheet xmlns="{Main}"><numFmts count="1"><numFmt numFmtId="164" formatCode="0000"/></numFmts>
        <cellXfs count="5">
        <xf numFmtId="0"/><xf numFmtId="14"/><xf numFmtId="22"/><xf numFmtId="10"/><xf numFmtId="164"/></cellXfs></styleSheet>
        """;

    /// <summary>A workbook of sheets: name and rows, each row the cells as <see cref="Text"/>, <see cref="Number"/> and so on make
    /// them.</summary>
    public static byte[] Of(params (string Name, string[][] Rows)[] sheets)
    {
        string list = Each(sheets, (sheet, i) => $"""<sheet name="{sheet.Name}" sheetId="{i}" r:id="r{i}"/>""");
        string links = Each(sheets, (_, i) =>
            $"""<Relationship Id="r{i}" Type="{Relations}/worksheet" Target="worksheets/sheet{i}.xml"/>""");
        string styles = $"""<Relationship Id="s" Type="{Relations}/styles" Target="styles.xml"/>""";
        List<(string Name, string Xml)> parts =
        [
            ("xl/workbook.xml", $"""<workbook xmlns="{Main}" xmlns:r="{Relations}"><sheets>{list}</sheets></workbook>"""),
            ("xl/styles.xml", Styles),
            ("xl/_rels/workbook.xml.rels", $"""<Relationships xmlns="{Packages}">{links}{styles}</Relationships>"""),
            .. sheets.Select((sheet, i) => ($"xl/worksheets/sheet{i + 1}.xml", Sheet(sheet.Rows))),
        ];
        return Packed(parts.Select(part => (part.Name, Encoding.UTF8.GetBytes(part.Xml))));
    }

    /// <summary>Parts in one package.</summary>
    public static byte[] Packed(IEnumerable<(string Name, byte[] Content)> parts)
    {
        using MemoryStream bytes = new();
        using (ZipArchive package = new(bytes, ZipArchiveMode.Create))
        {
            foreach ((string name, byte[] content) in parts)
            {
                using Stream part = package.CreateEntry(name).Open();
                part.Write(content);
            }
        }

        return bytes.ToArray();
    }

    public static string Text(string text) => $"""<c t="inlineStr"><is><t>{text}</t></is></c>""";

    public static string Number(string value, int style = 0) => $"""<c s="{style}"><v>{value}</v></c>""";

    public static string Flag(bool value) => $"""<c t="b"><v>{(value ? 1 : 0)}</v></c>""";

    /// <summary>A formula that was never worked out.</summary>
    public static string Formula(string text) => $"<c><f>{text}</f></c>";

    public static string Error(string word) => $"""<c t="e"><v>{word}</v></c>""";

    private const string Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string Packages = "http://schemas.openxmlformats.org/package/2006/relationships";

    private static string Sheet(string[][] rows)
    {
        string lines = Each(rows, (row, i) => $"""<row r="{i}">{string.Concat(row)}</row>""");
        return $"""<worksheet xmlns="{Main}"><sheetData>{lines}</sheetData></worksheet>""";
    }

    private static string Each<T>(IReadOnlyList<T> all, Func<T, int, string> text) =>
        string.Concat(all.Select((one, i) => text(one, i + 1)));
}
