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
        bool shaped = curve == SeamFamily.Shaped;
        if (given && seam.Has(SeamFields.WaistMm))
        {
            throw seam.Fault(SeamFields.WaistMm, "has no place beside seam.curve points: the points have a waist of their own");
        }

        RefuseStray(seam, SeamFields.Points, given, curve, SeamFamily.Points);
        RefuseStray(seam, SeamFields.Offsets, shaped, curve, SeamFamily.Shaped);

        SeamSpec spec = new()
        {
            Curve = curve,
            WaistMm = given ? 0 : seam.Number(SeamFields.WaistMm),
            SeamGapMm = seam.Number(SeamFields.SeamGapMm),
            Adhesive = Adhesive(seam),
        };
        if (shaped)
        {
            return spec with { Offsets = [.. JsonShapes.Pairs(seam, SeamFields.Offsets, file).Select(Offset)] };
        }

        return given
            ? spec with { Points = [.. JsonShapes.SpacePoints(seam, SeamFields.Points, file).Select(p => new SeamPoint(p.X, p.Y, p.Z))] }
            : spec;
    }

    private static AdhesiveRange? Adhesive(JsonFields seam)
    {
        double? least = seam.OptionalNumber(SeamFields.AdhesiveLeastMm);
        double? most = seam.OptionalNumber(SeamFields.AdhesiveMostMm);
        if (least is null != most is null)
        {
            (Field given, Field missing) = least is null
                ? (SeamFields.AdhesiveMostMm, SeamFields.AdhesiveLeastMm)
                : (SeamFields.AdhesiveLeastMm, SeamFields.AdhesiveMostMm);
            throw seam.Fault(given, $"stands without {missing.Name}: the adhesive's range needs both");
        }

        if (least >= most)
        {
            throw seam.Fault(
                SeamFields.AdhesiveMostMm, FormattableString.Invariant($"{most} mm is not above adhesiveLeastMm, {least} mm"));
        }

        return least is { } from && most is { } to ? new AdhesiveRange { LeastMm = from, MostMm = to } : null;
    }

    // An order that is no whole number is told by the seam, which knows which orders it takes.
    private static SeamOffset Offset((double Order, double AmountMm) row) =>
        new(row.Order == Math.Floor(row.Order) && Math.Abs(row.Order) < int.MaxValue ? (int)row.Order : -1, row.AmountMm);

    private static void RefuseStray(JsonFields seam, Field field, bool wanted, SeamFamily curve, SeamFamily owner)
    {
        if (!wanted && seam.Has(field))
        {
            throw seam.Fault(
                field, $"has no place beside seam.curve {EnumWord.Of(curve)}: leave it out, or say {EnumWord.Of(owner)} there");
        }
    }
}
