using FeltNest.Ball;
using FeltNest.Layout;

namespace FeltNest.Design;

/// <summary>Least felt against stretch: shaped seams beside the families that have a waist alone.</summary>
internal sealed record SeamFront
{
    /// <summary>What was asked.</summary>
    public required SeamQuestion Question { get; init; }

    /// <summary>The question asked of the layout engine, with the part of the first seam.</summary>
    public required LayoutRequest Roll { get; init; }

    /// <summary>The ball as it was given.</summary>
    public required SeamChoice Given { get; init; }

    /// <summary>One for each limit of stretch and family, shaped seams first, the least limit first.</summary>
    public required IReadOnlyList<SeamMark> Marks { get; init; }

    /// <summary>Families without a seam at a limit, with the reason.</summary>
    public required IReadOnlyList<(double StretchLimitPercent, SeamFamily Curve, string Reason)> Unanswered { get; init; }

    /// <summary>Panels solved on the way: the counted work.</summary>
    public required int Solves { get; init; }

    /// <summary>True when the design was stopped before all was done.</summary>
    public required bool CutShort { get; init; }

    /// <summary>What must be looked at before any of it is believed.</summary>
    public static string Caution =>
        "felt and stretch alone are computed here: mould marks, the look of the seam, the wrap and the flight are not. Wrap a trial ball "
            + "first, and ask the maker of mould and covering machine whether they take the seam";

    /// <summary>Marks of a family, the least limit first.</summary>
    public IEnumerable<SeamMark> Of(SeamFamily curve) => Marks.Where(mark => mark.Curve == curve);
}
