using System.Globalization;
using System.IO.Compression;
using System.Text;
using FeltNest.Drawing.Lettering;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Writers;

/// <summary>Writes sheets as one PDF, a page each, true to size: pages in points to a thousandth, content in mm. Same sheets, same bytes:
/// no date, no identifier.</summary>
/// <remarks>PDF 1.4 after ISO 32000-1 (from memory). Text is drawn in strokes like everywhere, and lies there once more unseen, so that it
/// is found and copied; arcs are Bezier curves of at most a quarter turn each, within 3e-4 of their radius.</remarks>
internal static class PdfWriter
{
    private const double PointsPerMm = 72 / 25.4;

    // Largest turn one Bezier curve stands for.
    private const double Quarter = Math.PI / 4;

    // The unseen text is set in a standard font whose letters are all of one width: shares of the size it is set at, and how much that is
    // over the height of the capitals.
    private const string Font =
        "<< /Type /Font /Subtype /Type1 /BaseFont /Courier /Encoding /WinAnsiEncoding >>";
    private const double LetterWidth = 0.6;
    private const double SizeOverCapitals = 1.6;

    /// <summary>The file's bytes.</summary>
    public static byte[] Write(IReadOnlyList<Sheet> sheets)
    {
        using MemoryStream file = new();
        List<long> offsets = [];
        Put(file, "%PDF-1.4\n%\u00e2\u00e3\u00cf\u00d3\n");
        int pages = sheets.Count;

        // Objects: 1 catalogue, 2 page tree, 3 information, 4 font, then a page and its content for each sheet.
        Begin(file, offsets, "<< /Type /Catalog /Pages 2 0 R >>");
        Begin(
            file, offsets,
            $"<< /Type /Pages /Count {pages} /Kids [{string.Join(' ', Enumerable.Range(0, pages).Select(i => $"{5 + (2 * i)} 0 R"))}] >>");
        Begin(file, offsets, $"<< /Title ({Escaped(sheets[0].Title)}) /Subject ({Escaped(sheets[0].Description)}) >>");
        Begin(file, offsets, Font);
        byte[][] contents = [.. sheets.AsParallel().AsOrdered().Select(sheet => Packed(Content(sheet)))];
        for (int i = 0; i < pages; i++)
        {
            Sheet sheet = sheets[i];
            Begin(
                file, offsets,
                $"<< /Type /Page /Parent 2 0 R /MediaBox [0 0 {Number(sheet.WidthMm * PointsPerMm)} "
                    + $"{Number(sheet.HeightMm * PointsPerMm)}] /Resources << /Font << /F 4 0 R >> >> /Contents {6 + (2 * i)} 0 R >>");
            byte[] content = contents[i];
            offsets.Add(file.Position);
            Put(file, $"{offsets.Count} 0 obj\n<< /Length {content.Length} /Filter /FlateDecode >>\nstream\n");
            file.Write(content);
            Put(file, "\nendstream\nendobj\n");
        }

        long table = file.Position;
        Put(file, $"xref\n0 {offsets.Count + 1}\n0000000000 65535 f \n");
        offsets.ForEach(at => Put(file, $"{at:0000000000} 00000 n \n"));
        Put(file, $"trailer\n<< /Size {offsets.Count + 1} /Root 1 0 R /Info 3 0 R >>\nstartxref\n{table}\n%%EOF\n");
        return file.ToArray();
    }

    private static void Begin(MemoryStream file, List<long> offsets, string body)
    {
        offsets.Add(file.Position);
        Put(file, $"{offsets.Count} 0 obj\n{body}\nendobj\n");
    }

    private static string Content(Sheet sheet)
    {
        StringBuilder text = new();
        text.Append(Fine(PointsPerMm)).Append(" 0 0 ").Append(Fine(PointsPerMm)).Append(" 0 0 cm 1 j\n");
        foreach (Mark mark in sheet.Marks)
        {
            Draw(text, mark);
        }

        return text.ToString();
    }

    private static void Draw(StringBuilder text, Mark mark)
    {
        switch (mark)
        {
            case PathMark path:
                Paint(text, path);
                break;
            case TextMark { Text.Length: > 0 } words:
                Paint(text, new PathMark(StrokeFont.Strokes(words), StrokeFont.PenOf(words.HeightMm, words.Colour)));
                Unseen(text, words);
                break;
            case CopyMark copy:
                (double sin, double cos) = Math.SinCos(double.DegreesToRadians(copy.AngleDeg));
                text.Append("q ").AppendJoin(' ', new[] { cos, sin, -sin, cos, copy.At.X, copy.At.Y }.Select(Fine)).Append(" cm\n");
                DrawAll(text, copy.Symbol.Marks);
                text.Append("Q\n");
                break;
            case GroupMark group:
                text.Append("q\n");
                Clip(text, group.Clip);
                DrawAll(text, group.Marks);
                text.Append("Q\n");
                break;
        }
    }

    // The words over their strokes, spread to the same width.
    private static void Unseen(StringBuilder text, TextMark words)
    {
        double width = StrokeFont.Width(words.Text, words.HeightMm);
        double size = SizeOverCapitals * words.HeightMm;
        (double sin, double cos) = Math.SinCos(words.Angle);
        Point2 start = words.At - (new Point2(cos, sin) * (width * StrokeFont.Before(words.Anchor)));
        text
            .Append("BT 3 Tr /F ").Append(Number(size)).Append(" Tf ")
            .Append(Number(100 * width / (LetterWidth * size * words.Text.Length))).Append(" Tz ")
            .AppendJoin(' ', new[] { cos, sin, -sin, cos, start.X, start.Y }.Select(Fine)).Append(" Tm (")
            .Append(Escaped(words.Text)).Append(") Tj ET\n");
    }

    private static void DrawAll(StringBuilder text, IEnumerable<Mark> marks)
    {
        foreach (Mark mark in marks)
        {
            Draw(text, mark);
        }
    }

    private static void Clip(StringBuilder text, Box? clip)
    {
        if (clip is { } box)
        {
            text.AppendJoin(' ', new[] { box.MinX, box.MinY, box.Width, box.Height }.Select(Number)).Append(" re W n\n");
        }
    }

    private static void Paint(StringBuilder text, PathMark mark)
    {
        if (mark.Chains.Count == 0)
        {
            return;
        }

        if (mark.Fill is { } fill)
        {
            text.Append(Tint(fill)).Append(" rg ");
        }

        if (mark.Pen is { } pen)
        {
            text
                .Append(Tint(pen.Colour))
                .Append(" RG ")
                .Append(Number(pen.WidthMm))
                .Append(" w ")
                .Append(pen.Dashes.Length > 0 ? "0 J [" : "1 J [")
                .AppendJoin(' ', pen.Dashes.Select(Number)).Append("] 0 d\n");
        }

        foreach (Chain chain in mark.Chains)
        {
            Trace(text, chain);
        }

        text.Append(Painted(mark.Fill is not null, mark.Pen is not null)).Append('\n');
    }

    private static string Painted(bool filled, bool drawn) => (filled, drawn) switch
    {
        (true, true) => "B*",
        (true, false) => "f*",
        (false, true) => "S",
        _ => "n",
    };

    private static void Trace(StringBuilder text, Chain chain)
    {
        IReadOnlyList<ArcVertex> vertices = chain.Vertices;
        text.Append(Place(vertices[0].Point)).Append(" m ");
        int pieces = chain.Closed ? vertices.Count : vertices.Count - 1;
        for (int i = 0; i < pieces; i++)
        {
            ArcVertex from = vertices[i];
            Point2 to = vertices[(i + 1) % vertices.Count].Point;
            if (from.Turn == 0 || from.Point == to)
            {
                text.Append(Place(to)).Append(" l ");
                continue;
            }

            ArcPiece arc = ArcPiece.Between(from.Point, to, from.Turn);
            int count = (int)Math.Ceiling(Math.Abs(from.Turn) / Quarter);
            double share = from.Turn / count;
            double reach = 4.0 / 3 * Math.Tan(share / 4);
            for (int k = 0; k < count; k++)
            {
                Point2 a = arc.Spoke(k * share);
                Point2 b = arc.Spoke((k + 1) * share);
                Point2 end = k == count - 1 ? to : arc.Centre + b;
                text
                    .Append(Place(arc.Centre + a + (a.Left * reach)))
                    .Append(' ')
                    .Append(Place(arc.Centre + b - (b.Left * reach)))
                    .Append(' ')
                    .Append(Place(end))
                    .Append(" c ");
            }
        }

        text.Append(chain.Closed ? "h\n" : "\n");
    }

    private static byte[] Packed(string content)
    {
        using MemoryStream packed = new();
        using (ZLibStream zip = new(packed, CompressionLevel.Optimal))
        {
            zip.Write(Encoding.ASCII.GetBytes(content));
        }

        return packed.ToArray();
    }

    private static string Tint(Colour colour) =>
        $"{Number(colour.Red / 255.0)} {Number(colour.Green / 255.0)} {Number(colour.Blue / 255.0)}";

    private static string Place(Point2 p) => $"{Number(p.X)} {Number(p.Y)}";

    // A thousandth of a millimetre is finer than anything that can be printed; what enlarges or turns a whole sheet needs more digits.
    private static string Number(double value) => (Math.Round(value, 3) + 0.0).ToString("0.###", CultureInfo.InvariantCulture);

    private static string Fine(double value) => (Math.Round(value, 8) + 0.0).ToString("0.########", CultureInfo.InvariantCulture);

    private static string Escaped(string text) =>
        string.Concat(text.Select(Escaped));

    private static string Escaped(char letter) => letter switch
    {
        '(' or ')' or '\\' => $"\\{letter}",
        >= ' ' and <= '~' => $"{letter}",
        >= '\u00a0' and <= '\u00ff' => $"\\{Convert.ToString(letter, 8)}",
        _ => "?",
    };

    private static void Put(MemoryStream file, string text) => file.Write(Encoding.Latin1.GetBytes(text));
}
