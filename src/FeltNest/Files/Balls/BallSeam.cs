using FeltNest.Ball;
using FeltNest.Files.Fields;
using FeltNest.Files.Json;
using static FeltNest.Files.Balls.BallDocument;

namespace FeltNest.Files.Balls;

/// <summary>Reads the seam of a ball: a family with its waist, or points, which have a waist of their own.</summary>
internal static class BallSeam
{
    /// <summary>The field <c>seam</c> of a ball.</summary>
    /// <exception cref="InputException">A field is missing, or belongs to the other kind of seam.</exception>
    public static SeamSpec Of(JsonFields top, string file)
    {
        JsonFields seam = top.Object(BallDocument.Seam);
        SeamFamily curve = seam.Word(SeamFields.Curve);
        bool given = curve == SeamFamily.Points;
        Field stray = given ? SeamFields.WaistMm : SeamFields.Points;
        if (seam.Has(stray))
        {
            throw seam.Fault(
                stray,
                given
                    ? "has no place beside seam.curve points: the points have a waist of their own"
                    : $"has no place beside seam.curve {EnumWord.Of(curve)}: leave it out, or say points there");
        }

        SeamSpec spec = new()
        {
            Curve = curve,
            WaistMm = given ? 0 : seam.Number(SeamFields.WaistMm),
            SeamGapMm = seam.Number(SeamFields.SeamGapMm),
        };
        return given
            ? spec with { Points = [.. JsonShapes.SpacePoints(seam, SeamFields.Points, file).Select(p => new SeamPoint(p.X, p.Y, p.Z))] }
            : spec;
    }
}
