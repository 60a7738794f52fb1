using System.Text.Json;
using FeltNest.Die.Check;
using FeltNest.Die.Make;
using FeltNest.Die.Order;
using FeltNest.Files.Fields;
using FeltNest.Files.Json;
using FeltNest.Files.Layouts;
using FeltNest.Files.Outlines;
using FeltNest.Geometry;
using FeltNest.Layout;
using static FeltNest.Files.Dies.DieDocument;
using static FeltNest.Files.Dies.DieRuleFields;

namespace FeltNest.Files.Dies;

/// <summary>Reads a gang die (schema feltnest/die/1) for checking, planning and first articles.</summary>
internal static class DieReader
{
    /// <summary>The die of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static DieInput Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The die of a text.</summary>
    /// <exception cref="InputException">Names the text, the field, the value found and what is allowed.</exception>
    public static DieInput Read(InputText text) => Read(text.Name, JsonInput.ReadObject(text));

    /// <summary>Whether a file says that it is a die.</summary>
    public static bool IsDie(string path) => Path.GetExtension(path).Equals(".json", StringComparison.OrdinalIgnoreCase)
        && JsonInput.ReadObject(InputText.OfFile(path)).TryGetProperty(Files.Fields.Document.SchemaField, out JsonElement schema)
        && schema.ValueKind == JsonValueKind.String
        && schema.GetString() == SchemaName.Die;

    /// <summary>The die of a JSON object already read from a file.</summary>
    internal static DieInput Read(string path, JsonElement root)
    {
        JsonFields top = JsonFields.Top(path, root, DieDocument.Document);
        LayoutInput layout = LayoutReader.Read($"{path}: layout", top.Inner(DieDocument.Layout));
        int parts = layout.Layout.Parts.Count;
        PlacedPanel[] cavities = [.. top.Objects(Cavities).Select(item => PlacedFields.Read(item, parts))];
        Dictionary<int, ArcOutline> edges = EdgesOf(top, path, parts);
        if (cavities.Length == 0)
        {
            throw top.Fault(Cavities, "is empty: a die has at least one cavity");
        }

        if (cavities.Any(c => !edges.ContainsKey(c.Part)))
        {
            throw top.Fault(Edges, "lacks the edge of a part that a cavity cuts");
        }

        JsonFields strike = top.Object(Strike);
        return new DieInput
        {
            Layout = layout,
            Die = DieOf(top, strike, new Cut { Cavities = cavities, Edges = edges, Bands = layout.Layout.Bands.Count, File = path }),
            Repeats = strike.Whole(StrikeFields.Repeats),
            Wear = top.OptionalObject(Wear) is { } wear ? WearOf(wear) : null,
            Replaces = top.OptionalText(Replaces),
            PanelProfileMm = top.Number(PanelProfileMm),
        };
    }

    // Long because it is one list of fields in the order of the file.
    private static StatedDie DieOf(JsonFields top, JsonFields strike, Cut cut)
    {
        Point2[] places = PlacesOf(strike, cut.Bands, cut.Cavities.Length);
        JsonFields joint = top.Object(Joint);
        JsonFields board = top.Object(Board);
        JsonFields force = top.Object(Force);
        return new StatedDie
        {
            Name = top.Text(Name),
            Revision = top.OptionalText(Revision),
            Band = strike.Whole(StrikeFields.Band) - 1,
            Cavities = cut.Cavities,
            Places = places,
            Origin = new Point2(strike.Number(StrikeFields.OriginXMm), strike.Number(StrikeFields.OriginYMm)),
            FeedMm = top.Number(FeedMm),
            Edges = cut.Edges,
            BoardLengthMm = board.Number(BoardFields.LengthMm),
            BoardWidthMm = board.Number(BoardFields.WidthMm),
            LandMm = board.Number(BoardFields.LandMm),
            RuleLengthMm = top.Number(RuleLengthMm),
            LeastRadiusMm = Gap(top, LeastRadiusMm),
            LeastGapMm = Gap(top, LeastGapMm),
            NominalJointMm = Gap(joint, JointFields.NominalMm),
            WorstJointMm = Gap(joint, JointFields.WorstMm),
            FeedToleranceMm = joint.Number(JointFields.FeedToleranceMm),
            GuideToleranceMm = joint.Number(JointFields.GuideToleranceMm),
            EdgeProfileMm = joint.Number(JointFields.EdgeProfileMm),
            PositionMm = top.Number(PositionMm),
            ForceKn = top.Number(ForceKn),
            Force = ForceOf(force),
            CommonCuts = CommonOf(top, cut.Cavities.Length),
            EdgeLengthMm = top.OptionalNumber(EdgeLengthMm),
            MiddleInWasteMm = MiddleInWaste(top.Object(Rule)),
            AcrossMm = Gap(joint, JointFields.AcrossMm),
            AcrossWorstMm = Gap(joint, JointFields.AcrossWorstMm),
            BandMm = Gap(joint, JointFields.BandMm),
            BandWorstMm = Gap(joint, JointFields.BandWorstMm),
            Own = OwnOf(top, force, top.Object(Rule)),
            Laser = board.OptionalObject(BoardFields.Laser) is { } laser ? LaserOf(laser, cut.File) : null,
            Strips = top.Has(Strips) ? StripReader.Strips(top.Objects(Strips), cut.Edges, cut.File) : null,
            Stock = top.OptionalObject(Stock) is { } stock ? StripReader.Stock(stock, top.OptionalObjects(Strips).Count, cut.File) : null,
        };
    }

    private static StatedLaser LaserOf(JsonFields laser, string file) => new()
    {
        KerfMm = laser.Number(CutBoardFields.KerfMm),
        SlotMm = laser.Number(CutBoardFields.SlotMm),
        BridgeMm = laser.Number(CutBoardFields.BridgesMm),
        Mirrored = laser.Flag(CutBoardFields.Mirrored),
        Splits = [.. JsonShapes.Pairs(laser, CutBoardFields.Splits, file)],
    };

    // What the file says of the rule beside itself; older files say nothing.
    private static StatedOwnRule? OwnOf(JsonFields top, JsonFields force, JsonFields rule)
    {
        if (rule.OptionalNumber(RuleFields.EjectionRoomMm) is not { } room || force.OptionalNumber(ForceFields.CloseMm) is not { } close)
        {
            return null;
        }

        double thick = rule.Number(RuleFields.ThicknessMm);
        return new StatedOwnRule
        {
            ThicknessMm = thick,
            BodyInWasteMm = (thick / 2) + MiddleInWaste(rule),
            RoomMm = room,
            CloseMm = close,
            Narrow =
            [
                .. top.Objects(Edges).SelectMany(edge => edge.OptionalObjects(EdgeFields.Narrow).Select(n => new NarrowPlace
                {
                    Part = edge.Whole(EdgeFields.Panel),
                    InPanel = n.Word(NarrowFields.Between) == NarrowFields.Panel,
                    WidthMm = n.Number(NarrowFields.WidthMm),
                    Place = new Point2(n.Number(NarrowFields.X), n.Number(NarrowFields.Y)),
                    LengthMm = n.Number(NarrowFields.LengthMm),
                })),
            ],
        };
    }

    private static Dictionary<int, ArcOutline> EdgesOf(JsonFields top, string path, int parts)
    {
        Dictionary<int, ArcOutline> edges = [];
        foreach (JsonFields item in top.Objects(Edges))
        {
            List<ArcVertex> arcs = JsonShapes.Arcs(item, EdgeFields.Arcs, path);
            edges[PlacedFields.PartOf(item, EdgeFields.Panel, parts)] =
                OutlineReader.Shaped(path, item.PathOf(EdgeFields.Arcs), () => ArcOutline.From(arcs));
        }

        return edges;
    }

    private static Point2[] PlacesOf(JsonFields strike, int bands, int cavities)
    {
        Point2[] places = [.. strike.Objects(StrikeFields.Places).Select(StruckFields.Read)];
        int band = strike.Whole(StrikeFields.Band);
        int repeats = strike.Whole(StrikeFields.Repeats);
        if (band < 1 || band > bands || places.Length == 0 || repeats < 1)
        {
            throw strike.Fault(
                StrikeFields.Band, $"band {band} of {bands}, {repeats} repeats, {places.Length} places: each must be there and above 0");
        }

        return (long)cavities * places.Length <= MostStruck
            ? places
            : throw strike.Fault(
                StrikeFields.Places,
                $"{places.Length} places of {cavities} cavities cut more than {MostStruck} panels to a feed: that many are allowed");
    }

    private static Dictionary<(int, int), double> CommonOf(JsonFields top, int cavities)
    {
        int Cavity(JsonFields item, WholeField field) => item.Whole(field, 1, cavities, "the numbers of the cavities") - 1;
        Dictionary<(int, int), double> common = [];
        foreach (JsonFields item in top.Objects(CommonCuts))
        {
            common[(Cavity(item, CommonCutFields.First), Cavity(item, CommonCutFields.Second))] = item.Number(CommonCutFields.LengthMm);
        }

        return common;
    }

    private static StatedForce ForceOf(JsonFields force) => new()
    {
        LengthMm = force.Number(ForceFields.LengthMm),
        CloseAddedMm = force.Number(ForceFields.CloseAddedMm),
        Plies = force.Whole(ForceFields.Plies),
        NPerMmPerPly = force.Number(ForceFields.NPerMmPerPly),
        EjectionPercent = force.Number(ForceFields.EjectionPercent),
        ReservePercent = force.Number(ForceFields.ReservePercent),
    };

    // Of a bevel that the file does not know the body stands evenly on both sides.
    private static double MiddleInWaste(JsonFields rule) => rule.Number(RuleFields.ThicknessMm) / 2
        * (EnumWord.Find<RuleBevel>(rule.Text(RuleFields.Bevel)) switch
        {
            RuleBevel.SideWaste => 1,
            RuleBevel.SidePanel => -1,
            _ => 0,
        });

    private static double Gap(JsonFields fields, NumberField field) => fields.OptionalNumber(field) ?? double.PositiveInfinity;

    private static DieWear WearOf(JsonFields wear) => new()
    {
        Price = wear.Amount(WearFields.Price),
        Currency = wear.Currency(WearFields.Currency),
        LifeStrikes = wear.Whole(WearFields.LifeStrikes),
        ReRules = wear.Whole(WearFields.ReRules),
        ReRulePrice = wear.Has(WearFields.ReRules) ? wear.Amount(WearFields.ReRulePrice) : 0,
    };

    // What one strike cuts, and how many bands the layout has.
    private readonly record struct Cut
    {
        public required PlacedPanel[] Cavities { get; init; }

        public required Dictionary<int, ArcOutline> Edges { get; init; }

        public required int Bands { get; init; }

        public required string File { get; init; }
    }
}
