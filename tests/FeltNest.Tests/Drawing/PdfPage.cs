using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using FeltNest.Geometry;

namespace FeltNest.Tests.Drawing;

/// <summary>What a page of a PDF draws, read from its content: lines in points from the lower left corner of the page, and its
/// words.</summary>
internal sealed partial class PdfPage
{
    private readonly List<PdfPath> paths = [];
    private readonly List<string> words = [];

    private PdfPage(string content)
    {
        double[] place = [1, 0, 0, 1, 0, 0];
        Stack<double[]> kept = [];
        List<double> numbers = [];
        string last = string.Empty;
        foreach (string token in Tokens().Matches(content).Select(m => m.Value))
        {
            if (double.TryParse(token, NumberStyles.Float, CultureInfo.InvariantCulture, out double number))
            {
                numbers.Add(number);
                continue;
            }

            switch (token)
            {
                case "q":
                    kept.Push(place);
                    break;
                case "Q":
                    place = kept.Pop();
                    break;
                case "cm":
                    place = Times(numbers[^6..], place);
                    break;
                case "m":
                    paths.Add(new PdfPath([On(place, numbers[^2], numbers[^1])], false, false));
                    break;
                case "l" or "c":
                    paths[^1].Ends.Add(On(place, numbers[^2], numbers[^1]));
                    paths[^1] = paths[^1] with { Curved = paths[^1].Curved || token == "c" };
                    break;
                case "h":
                    paths[^1] = paths[^1] with { Closed = true };
                    break;
                case "Tj":
                    words.Add(last[1..^1]);
                    break;
            }

            last = token;
            numbers.Clear();
        }
    }

    internal IReadOnlyList<PdfPath> Paths => paths;

    internal IReadOnlyList<string> Words => words;

    internal static IReadOnlyList<PdfPage> Of(byte[] file)
    {
        string text = Encoding.Latin1.GetString(file);
        return [.. Streams().Matches(text).Select(m => new PdfPage(Unpacked(file, m.Index + m.Length, m.Groups[1].Value)))];
    }

    private static string Unpacked(byte[] file, int from, string length)
    {
        using MemoryStream packed = new(file, from, int.Parse(length, CultureInfo.InvariantCulture));
        using ZLibStream zip = new(packed, CompressionMode.Decompress);
        using StreamReader reader = new(zip, Encoding.Latin1);
        return reader.ReadToEnd();
    }

    private static double[] Times(List<double> m, double[] n) =>
    [
        (m[0] * n[0]) + (m[1] * n[2]), (m[0] * n[1]) + (m[1] * n[3]), (m[2] * n[0]) + (m[3] * n[2]), (m[2] * n[1]) + (m[3] * n[3]),
        (m[4] * n[0]) + (m[5] * n[2]) + n[4], (m[4] * n[1]) + (m[5] * n[3]) + n[5],
    ];

    private static Point2 On(double[] m, double x, double y) => new((m[0] * x) + (m[2] * y) + m[4], (m[1] * x) + (m[3] * y) + m[5]);

    [GeneratedRegex(@"\((?:\\.|[^\\()])*\)|/\w+|[\[\]]|[^\s\[\]()/]+")]
    private static partial Regex Tokens();

    [GeneratedRegex(@"<< /Length (\d+) /Filter /FlateDecode >>\nstream\n")]
    private static partial Regex Streams();

    /// <summary>A line: where its pieces end.</summary>
    internal sealed record PdfPath(List<Point2> Ends, bool Curved, bool Closed)
    {
        internal Point2 Low => new(Ends.Min(p => p.X), Ends.Min(p => p.Y));

        internal Point2 High => new(Ends.Max(p => p.X), Ends.Max(p => p.Y));

        /// <summary>Whether it is a closed line of that extent, mm.</summary>
        internal bool Is(double widthMm, double heightMm, bool curved) =>
            Closed && Curved == curved && Math.Abs((High - Low).X - (widthMm * 72 / 25.4)) < 0.02
                && Math.Abs((High - Low).Y - (heightMm * 72 / 25.4)) < 0.02;
    }
}
