using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Sheets.Rolls;

/// <summary>The band across a sheet that says a roll is too narrow in places: dark with light letters, so that it is seen in a grey print
/// too.</summary>
internal static class NarrowBand
{
    /// <summary>Room it takes, mm.</summary>
    public const double Height = 17;

    private static readonly Colour Light = Colour.Of(0xFFFFFF);

    /// <summary>The band; words that are too long for one line go on in a second.</summary>
    /// <param name="words">What it says.</param>
    /// <param name="box">Where it lies.</param>
    /// <param name="page">Page it is on, where a sheet has several.</param>
    public static Mark Draw(string words, Box box, string page = "")
    {
        double room = box.MaxX - box.MinX - 6;
        int split = words.IndexOf(": ", StringComparison.Ordinal) + 1;
        return new GroupMark($"too-narrow{page}", [
            new PathMark([Chain.Rectangle(box)], Ink.Wide, Ink.Dark),
            new TextMark
            {
                Text = StrokeFont.Fitted(words[..split], Ink.Title, room),
                At = new Point2(box.MinX + 3, box.MaxY - 7),
                HeightMm = Ink.Title,
                Colour = Light,
            },
            new TextMark
            {
                Text = StrokeFont.Fitted(words[split..].Trim(), Ink.Title, room),
                At = new Point2(box.MinX + 3, box.MinY + 2),
                HeightMm = Ink.Title,
                Colour = Light,
            },
        ]);
    }
}
