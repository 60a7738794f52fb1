using FeltNest.Drawing;

namespace FeltNest.Tests.Drawing;

/// <summary>The words on a sheet, inside groups too.</summary>
internal static class SheetWords
{
    internal static IReadOnlyList<TextMark> Of(Sheet sheet) => [.. sheet.Marks.SelectMany(Of)];

    private static IEnumerable<TextMark> Of(Mark mark) => mark switch
    {
        TextMark words => [words],
        GroupMark group => group.Marks.SelectMany(Of),
        _ => [],
    };
}
