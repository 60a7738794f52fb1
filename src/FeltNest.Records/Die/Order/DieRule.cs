namespace FeltNest.Die.Order;

/// <summary>The steel rule.</summary>
public sealed record DieRule
{
    /// <summary>Thickness of the body, mm: 0.71 is called 2 point.</summary>
    public required double ThicknessMm { get; init; }

    /// <summary>From foot to edge, mm.</summary>
    public required double HeightMm { get; init; }

    /// <summary>Where the edge stands.</summary>
    public required RuleBevel Bevel { get; init; }

    /// <summary>Body and edge, in the toolmaker's words.</summary>
    public required string Hardness { get; init; }

    /// <summary>Least inside radius the rule may be bent to, mm; 1.5 for 2 point and 2.5 for 3 point is common practice, no source: ask
    /// the die maker.</summary>
    public required double LeastBendMm { get; init; }

    /// <summary>Where the neutral line of a bend lies, share of the thickness from its inner face; null for the usual shares.</summary>
    public double? NeutralShare { get; init; }

    /// <summary>Length of one piece of stock, mm; null where the shop does not say.</summary>
    public double? StockMm { get; init; }

    /// <summary>Lost at each cut, mm.</summary>
    public double CutLossMm { get; init; }

    /// <summary>Thickness in points of 1/72 inch, rounded to a half.</summary>
    public double Points => Math.Round(ThicknessMm / 25.4 * 72 * 2) / 2;

    /// <summary>Body that stands on the waste's side of the cutting edge, mm.</summary>
    public double BodyInWasteMm => Bevel switch
    {
        RuleBevel.SideWaste => ThicknessMm,
        RuleBevel.SidePanel => 0,
        _ => ThicknessMm / 2,
    };

    /// <summary>How far the middle of the body stands on the waste's side of the cutting edge, mm; below 0 on the panel's.</summary>
    public double MiddleInWasteMm => BodyInWasteMm - (ThicknessMm / 2);

    /// <summary>Least gap from edge to edge at which the bodies of two rules and what ejects between them have room, mm.</summary>
    public double LeastGapMm(double ejectionMm) => (2 * BodyInWasteMm) + ejectionMm;

    /// <summary>Body that stands on the panel's side of the cutting edge, mm.</summary>
    public double BodyInPanelMm => ThicknessMm - BodyInWasteMm;

    /// <summary>Least width of a neck from edge to edge at which the two bodies inside it and what ejects between them have room,
    /// mm.</summary>
    public double LeastNeckMm(double ejectionMm) => (2 * BodyInPanelMm) + ejectionMm;

    /// <summary>Least distance of two edges at which their bodies stand beside each other and the board between them is no thinner than
    /// nothing, mm.</summary>
    /// <param name="inPanel">Whether the panel lies between them, or the waste.</param>
    public double BodiesMm(bool inPanel) => Math.Max(ThicknessMm, 2 * (inPanel ? BodyInPanelMm : BodyInWasteMm));

    /// <summary>Inside radius of the body where the edge bends with a radius, mm.</summary>
    /// <param name="radiusMm">Radius of the edge.</param>
    /// <param name="outward">True where the edge bulges outwards, so that the panel lies inside the bend.</param>
    public double InsideBendMm(double radiusMm, bool outward) => radiusMm - (outward ? ThicknessMm - BodyInWasteMm : BodyInWasteMm);
}
