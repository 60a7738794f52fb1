using FeltNest.Ball;
using FeltNest.Files.Json;

namespace FeltNest.Files.Balls;

/// <summary>Reads the seam of a ball: a family with its waist, or points, which have a waist of their own.</summary>
internal static class BallSeam
{
    /// <summary>The field <c>seam</c> of a ball.</summary>
    /// <exception cref="InputException">A field is missing, or belongs to the other kind of seam.</exception>
    public static SeamSpec Of(JsonFields top, string file)
    {
        JsonFields seam = top.Object("seam", "curve", "waistMm", "points", "seamGapMm");
        SeamFamily curve = seam.Word<SeamFamily>("curve");
        bool given = curve == SeamFamily.Points;
        string stray = given ? "waistMm" : "points";
        if (seam.Has(stray))
        {
            throw seam.Fault(
                stray,
                given
                    ? "has no place beside seam.curve points: the points have a waist of their own"
                    : $"has no place beside seam.curve {EnumWord.Of(curve)}: leave it out, or say points there");
        }

        SeamSpec spec = new(curve, given ? 0 : seam.Number("waistMm"), seam.Number("seamGapMm"));
        return given
            ? spec with { Points = [.. JsonShapes.SpacePoints(seam, "points", file).Select(p => new SeamPoint(p.X, p.Y, p.Z))] }
            : spec;
    }
}
