using FeltNest.Ball;
using FeltNest.Ball.Passport;
using FeltNest.Drawing.Sheets.Felts;
using FeltNest.Files.Felts;
using FeltNest.Files.Outlines;
using FeltNest.Geometry;
using FeltNest.Panel;
using FeltNest.Panel.Lot;
using FeltNest.Report;

namespace FeltNest.Runs.Panels;

/// <summary>What a die cuts laid on its ball with the felt before and with a new lot.</summary>
internal sealed class LotRun : IRun
{
    /// <summary>The ball with the felt before.</summary>
    public required BallSpec Ball { get; init; }

    /// <summary>What the die cuts.</summary>
    public required ImportedOutline Outline { get; init; }

    /// <summary>Its file.</summary>
    public required string OutlineFile { get; init; }

    /// <summary>The felt file of the new lot.</summary>
    public required string LotFile { get; init; }

    /// <summary>The glue's range of gaps, mm.</summary>
    public required (double FromMm, double ToMm) Glue { get; init; }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } = ["lot.json", "lot.svg", "lot.png"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [.. Outline.Notes.Select(note => $"{OutlineFile}: {note}")];

    /// <inheritdoc/>
    public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt)
    {
        FeltFile felt = FeltReader.Read(LotFile);
        ArcOutline cut = NamedInput.Of(OutlineFile, () => UnitSlip.Sound(Outline.Curve, Ball.FittedRadiusMm));
        LotResult lot = NamedInput.Of(LotFile, () => LotStudy.Run(Ball, cut, felt, Glue));
        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => LotWriter.Write(Outline.Name, lot)),
                .. ResultFile.Pictures(FileNames.Skip(1), () => LotSheet.Draw(Outline.Name, lot)),
            ],
            Table = LotReport.Text(Outline.Name, lot),
        };
    }
}
