using FeltNest.Cost.Offers;
using FeltNest.Files.Families;
using FeltNest.Layout;

namespace FeltNest.Runs;

/// <summary>What a family is, and the widths that may be stocked for it.</summary>
internal sealed record FamilyAsk
{
    /// <summary>The balls of its list.</summary>
    public required IReadOnlyList<FamilyEntry> Balls { get; init; }

    /// <summary>The question to the layout engine for a part; its width does not matter.</summary>
    public required Func<LayoutPart, LayoutRequest> Lay { get; init; }

    /// <summary>Roll widths, mm, where no offers are given.</summary>
    public IReadOnlyList<double> WidthsMm { get; init; } = [];

    /// <summary>True for many widths that are laid in parallel rows from one set of tables a ball.</summary>
    public bool Scanned { get; init; }

    /// <summary>File of the offers, or null.</summary>
    public string? OffersFile { get; init; }

    /// <summary>What was noticed while lists were read.</summary>
    public IReadOnlyList<string> ListNotes { get; init; } = [];

    /// <summary>Offers, or null.</summary>
    public IReadOnlyList<FeltOffer>? Offers { get; init; }

    /// <summary>File of costs.</summary>
    public required string CostsFile { get; init; }

    /// <summary>Plans are made for up to so many widths, and for any number.</summary>
    public required int MostWidths { get; init; }
}
