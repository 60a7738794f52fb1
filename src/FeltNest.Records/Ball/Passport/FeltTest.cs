namespace FeltNest.Ball.Passport;

/// <summary>What one line of the readings is of.</summary>
internal enum FeltTest
{
    /// <summary>A place of the curve of force against extension of a strip.</summary>
    Strip,

    /// <summary>A strip that just closes round a core.</summary>
    Wrap,

    /// <summary>A disc pressed on a core.</summary>
    Disc,

    /// <summary>Two marks on a square before and after the cure.</summary>
    Square,

    /// <summary>Thickness under a foot.</summary>
    Thickness,

    /// <summary>A piece that was weighed.</summary>
    Mass,
}
