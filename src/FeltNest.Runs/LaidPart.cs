using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Files;
using FeltNest.Files.Outlines;
using FeltNest.Layout;
using FeltNest.Panel;

namespace FeltNest.Runs;

/// <summary>A part to lay: a ball with its flat panel, or an outline as it is.</summary>
internal sealed record LaidPart
{
    private LaidPart(LayoutPart part) => Part = part;

    /// <summary>The part.</summary>
    public LayoutPart Part { get; }

    /// <summary>The ball, or null for an outline.</summary>
    public BallSpec? Ball { get; private init; }

    /// <summary>The ball's panel, or null for an outline.</summary>
    public FlatPanel? Panel { get; private init; }

    /// <summary>What reading an outline assumed and healed.</summary>
    public IReadOnlyList<string> Notes { get; private init; } = [];

    /// <summary>The same with the outline's file named.</summary>
    public IReadOnlyList<string> NamedNotes { get; private init; } = [];

    /// <summary>The part of an input; a ball's panel is made.</summary>
    /// <param name="input">The ball or outline.</param>
    /// <param name="file">Its file, for what is told of it.</param>
    /// <exception cref="InputException">The ball's values do not go together.</exception>
    /// <exception cref="NoAnswerException">No panel keeps the ball's limits.</exception>
    public static LaidPart Of(PartInput input, string file) =>
        input.Ball is { } ball ? Of(ball.Ball, PanelFlattener.Flatten(ball.Ball)) : Of(input.Outline!, file);

    /// <summary>The part of a ball whose panel is there.</summary>
    public static LaidPart Of(BallSpec ball, FlatPanel panel) => new(CoverPart.Of(ball, panel)) { Ball = ball, Panel = panel };

    private static LaidPart Of(ImportedOutline outline, string file) =>
        new(outline.Part) { Notes = outline.Notes, NamedNotes = [.. outline.Notes.Select(note => $"{file}: {note}")] };
}
