using FeltNest.Die.Proof;
using FeltNest.Files.Json;
using static FeltNest.Files.Dies.MadeDieDocument;

namespace FeltNest.Files.Dies;

/// <summary>Writes a die as it was made (schema feltnest/made-die/1).</summary>
internal static class MadeDieWriter
{
    /// <summary>The bytes.</summary>
    public static byte[] Write(MadeDie made)
    {
        using JsonOutput json = new(Document);
        return json.Text(Name, made.Name)
            .Flag(Passed, made.Verdict == Conformity.Conforms)
            .Text(Verdict, EnumWord.Of(made.Verdict))
            .Number(EdgeProfileMm, made.Rule.ToleranceMm)
            .Number(PositionMm, made.PositionMm)
            .Number(UncertaintyMm, made.Rule.UncertaintyMm)
            .Number(GuardMm, made.Cavities[0].Edge.GuardMm)
            .Flag(InFrame, made.Rule.InFrame)
            .Number(TurnDeg, made.TurnDeg)
            .Flag(Mirrored, made.Mirrored)
            .Rows(NotMeasured, made.NotMeasured, number => [number])
            .Number(FarthestMm, made.Farthest.OffMm.Length)
            .Number(WidestZoneMm, made.Worst.Edge.ZoneMm)
            .Number(MeanOffMm, made.MeanOffMm)
            .Objects(Cavities, made.Cavities, Cavity)
            .Objects(Bends, made.Bends, Bend)
            .Finish();
    }

    private static void Cavity(JsonOutput item, MadeCavity cavity) => item
        .Number(CavityFields.Number, cavity.Number)
        .Number(CavityFields.Points, cavity.Edge.Points.Count)
        .Text(CavityFields.Edge, EnumWord.Of(cavity.Edge.Verdict))
        .Number(CavityFields.ZoneMm, cavity.Edge.ZoneMm)
        .Number(CavityFields.HiddenMm, cavity.Edge.HiddenMm)
        .Number(CavityFields.RejectGuardMm, cavity.Edge.RejectGuardMm)
        .Number(CavityFields.MeanOffMm, cavity.Edge.SquaresMeanMm)
        .Text(CavityFields.Position, EnumWord.Of(cavity.Position))
        .Number(CavityFields.XMm, cavity.Wanted.X)
        .Number(CavityFields.YMm, cavity.Wanted.Y)
        .Number(CavityFields.OffXMm, cavity.OffMm.X)
        .Number(CavityFields.OffYMm, cavity.OffMm.Y)
        .Number(CavityFields.InPlaceMm, cavity.InPlaceMm);

    private static void Bend(JsonOutput item, (int Part, OpenedBend Bend) bend) => item
        .Number(BendFields.Part, bend.Part)
        .Number(BendFields.Number, bend.Bend.Number)
        .Number(BendFields.X, bend.Bend.Place.X)
        .Number(BendFields.Y, bend.Bend.Place.Y)
        .Number(BendFields.WantedDeg, bend.Bend.WantedDeg)
        .Number(BendFields.OpenedPercent, 100 * bend.Bend.OpenedShare)
        .Number(BendFields.ErrorPercent, 100 * bend.Bend.ErrorShare)
        .Number(BendFields.GotDeg, bend.Bend.GotDeg)
        .Number(BendFields.SetDeg, bend.Bend.SetDeg);
}
