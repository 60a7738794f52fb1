using System.Text.Json;
using FeltNest.Files.Json;
using FeltNest.Files.Outlines;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using static FeltNest.Files.Layouts.LayoutDocument;

namespace FeltNest.Files.Layouts;

/// <summary>Reads a layout (schema feltnest/layout/1). <c>yield</c> and <c>search</c> may be left out; everything the geometry needs may
/// not.</summary>
internal static class LayoutReader
{
    /// <summary>The layout of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static LayoutInput Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The layout of a text.</summary>
    /// <exception cref="InputException">Names the text, the field, the value found and what is allowed.</exception>
    public static LayoutInput Read(InputText text) => Read(text.Name, JsonInput.ReadObject(text));

    /// <summary>The layout of a JSON object already read from a file.</summary>
    internal static LayoutInput Read(string path, JsonElement root)
    {
        JsonFields top = JsonFields.Top(path, root, LayoutDocument.Document);
        JsonFields roll = top.Object(Roll);
        List<StatedFigure> stated = [new(roll.PathOf(RollFields.UsableWidthMm), roll.Number(RollFields.UsableWidthMm))];
        LayoutPart[] parts = [.. top.Objects(LayoutDocument.Panels).Select(item => Part(path, item, stated))];
        if (parts.Length == 0)
        {
            throw top.Fault(LayoutDocument.Panels, "is empty: at least one panel is wanted");
        }

        try
        {
            double width = roll.Number(RollFields.WidthMm);
            double edge = roll.Number(RollFields.EdgeMm);
            EdgeTrims trims = new() { LowerMm = edge, UpperMm = roll.OptionalNumber(RollFields.UpperEdgeMm) ?? edge };
            LayoutBand[] bands = BandsOf(top, parts.Length, trims, width);
            LayoutRules kept = LayoutRulesJson.Read(top, bands.Length);
            StatedYield.Collect(top, stated);
            RollLayout layout = new()
            {
                Parts = parts,
                RollWidthMm = width,
                Trims = trims,
                GapMm = top.Number(GapMm),
                Rules = kept,
                Bands = bands,
                Search = SearchRecordJson.Read(top),
            };
            return new LayoutInput(layout, stated);
        }
        catch (InputException error)
        {
            throw error.File is null ? error.InFile(path) : error;
        }
    }

    private static LayoutPart Part(string path, JsonFields item, List<StatedFigure> stated)
    {
        string name = item.Text(PanelFields.Name);
        string field = item.PathOf(PanelFields.Outline);
        List<Point2> points = JsonShapes.Points(item, PanelFields.Outline, path);
        Outline outline = OutlineReader.Shaped(path, field, () => Outline.From(points));
        ArcOutline? curve = null;
        if (item.Has(PanelFields.Arcs) && item.Elements(PanelFields.Arcs).GetArrayLength() > 0)
        {
            List<ArcVertex> arcs = JsonShapes.Arcs(item, PanelFields.Arcs, path);
            // Straight pieces all round only repeat the polygon.
            if (arcs.Exists(v => v.Turn != 0))
            {
                curve = OutlineReader.Shaped(path, item.PathOf(PanelFields.Arcs), () => ArcOutline.From(arcs));
            }
        }

        stated.Add(new(item.PathOf(PanelFields.AreaMm2), item.Number(PanelFields.AreaMm2)));
        stated.Add(new(item.PathOf(PanelFields.PerimeterMm), item.Number(PanelFields.PerimeterMm)));
        return new LayoutPart
        {
            Name = name,
            Ball = item.OptionalText(PanelFields.Ball),
            Outline = outline,
            Arcs = curve,
            MassPerAreaGsm = item.OptionalNumber(PanelFields.MassPerAreaGsm),
            WarpAngleDeg = item.NumberOr(PanelFields.WarpAngleDeg),
        };
    }

    private static LayoutBand[] BandsOf(JsonFields top, int parts, EdgeTrims trims, double width)
    {
        if (top.Has(Repeat) == top.Has(Bands))
        {
            throw top.Fault(Repeat, "give either 'repeat' or 'bands', one of them");
        }

        if (top.Has(Repeat))
        {
            return [new LayoutBand
            {
                YFromMm = trims.LowerMm,
                YToMm = width - trims.UpperMm,
                Repeat = RepeatOf(top.Object(Repeat), parts),
            }];
        }

        LayoutBand[] bands =
        [
            .. top.Objects(Bands).Select(band => new LayoutBand
            {
                YFromMm = band.Number(BandFields.YFromMm),
                YToMm = band.Number(BandFields.YToMm),
                Repeat = RepeatOf(band.Object(BandFields.Repeat), parts),
            }),
        ];
        return bands.Length > 0 ? bands : throw top.Fault(Bands, "is empty: at least one band is wanted");
    }

    private static LayoutRepeat RepeatOf(JsonFields repeat, int parts)
    {
        double length = repeat.Number(RepeatFields.LengthMm);
        PlacedPanel[] placed = [.. repeat.Objects(RepeatFields.Panels).Select(item => PlacedFields.Read(item, parts))];
        return placed.Length > 0
            ? new LayoutRepeat(length, placed) { Strike = StrikeOf(repeat.OptionalObject(RepeatFields.Strike)) }
            : throw repeat.Fault(RepeatFields.Panels, "is empty: a repeat holds at least one panel");
    }

    private static StrikeBlock? StrikeOf(JsonFields? strike)
    {
        if (strike is null)
        {
            return null;
        }

        int panels = strike.Whole(StrikeFields.Panels);
        Point2[] places = [.. strike.Objects(StrikeFields.Places).Select(StruckFields.Read)];
        return places.Length >= 1
            ? new StrikeBlock
            {
                Panels = panels,
                Places = places,
                LengthMm = strike.Number(StrikeFields.LengthMm),
                WidthMm = strike.Number(StrikeFields.WidthMm),
            }
            : throw strike.Fault(StrikeFields.Places, "is empty: a die is struck at least once");
    }
}
