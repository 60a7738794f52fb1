using FeltNest.Files.Json;
using FeltNest.Layout;
using FeltNest.Layout.Quality;

namespace FeltNest.Files.Layouts;

/// <summary>The <c>search</c> object of a layout file.</summary>
internal static class SearchFields
{
    /// <summary>Writes how the layout was found.</summary>
    internal static void Write(JsonOutput json, SearchRecord search)
    {
        json.Number("seed", search.Seed).Number("effort", search.Effort).Flag("cutShort", search.CutShort).Text("method", search.Method);
        if (search.ProvedOnGrid is { } grid)
        {
            json.Object("provedOnGrid", proof => proof.Number("angleStepDeg", grid.AngleStepDeg).Number("pitchStepMm", grid.PitchStepMm));
        }
        else
        {
            json.Text("provedOnGrid", null);
        }

        json.Number("planeUtilisationPercent", search.PlaneUtilisationPercent)
            .Number("upperBoundPercent", search.UpperBoundPercent > 0 ? search.UpperBoundPercent : null)
            .Number("leastGapMm", search.LeastGapMm)
            .Number("freerRowsPanelsPerMetre", search.FreerRowsPanelsPerMetre);
        if (search.Loss is { } loss)
        {
            json.Object("loss", item => item
                .Number("shapePercent", loss.ShapePercent)
                .Number("gapPercent", loss.GapPercent)
                .Number("trimPercent", loss.TrimPercent)
                .Number("edgesPercent", loss.EdgesPercent)
                .Number("rowFitPercent", loss.RowFitPercent));
        }

        json.Objects("methods", search.Methods, (item, reach) => item
            .Text("method", reach.Method).Number("panelsPerMetre", reach.PanelsPerMetre).Number("bands", reach.Bands));
        json.Objects("ruleCosts", search.RuleCosts, (item, cost) => item
            .Text("rule", cost.Rule).Number("panelsPerMetreWithout", cost.PanelsPerMetreWithout).Text("words", cost.Words));
    }

    /// <summary>Reads it; a file may leave it out.</summary>
    /// <exception cref="InputException">Names the field, the value found and what is allowed.</exception>
    internal static SearchRecord Read(JsonFields top)
    {
        if (!top.Has("search"))
        {
            return new SearchRecord(1, 1, false, "not stated", null, 0, 0, null);
        }

        JsonFields search = top.Object(
            "search", "seed", "effort", "cutShort", "method", "provedOnGrid", "planeUtilisationPercent", "upperBoundPercent", "leastGapMm",
            "freerRowsPanelsPerMetre",
            "loss", "methods", "ruleCosts");
        GridProof? proof = null;
        if (search.Has("provedOnGrid"))
        {
            JsonFields grid = search.Object("provedOnGrid", "angleStepDeg", "pitchStepMm");
            proof = new GridProof(grid.Number("angleStepDeg"), grid.Number("pitchStepMm"));
        }

        return new SearchRecord(
            search.Whole("seed"), search.Whole("effort"), search.Flag("cutShort"), search.Text("method"), proof,
            search.OptionalNumber("planeUtilisationPercent") ?? 0,
            search.OptionalNumber("leastGapMm") ?? 0, search.OptionalNumber("freerRowsPanelsPerMetre"))
        {
            UpperBoundPercent = search.OptionalNumber("upperBoundPercent") ?? 0,
            Loss = search.Has("loss")
                ? Loss(search.Object("loss", "shapePercent", "gapPercent", "trimPercent", "edgesPercent", "rowFitPercent"))
                : null,
            Methods = search.Has("methods")
                ?
                [
                    .. search
                        .Objects("methods", "method", "panelsPerMetre", "bands")
                        .Select(m => new MethodReach(m.Text("method"), m.Number("panelsPerMetre"), m.Whole("bands"))),
                ] : [],
            RuleCosts = search.Has("ruleCosts")
                ? [.. search.Objects("ruleCosts", "rule", "panelsPerMetreWithout", "words")
                    .Select(c => new RuleCost(c.Text("rule"), c.Number("panelsPerMetreWithout"), c.Text("words")))] : [],
        };
    }

    private static LossSplit Loss(JsonFields loss) => new(
        loss.Number("shapePercent"), loss.Number("gapPercent"), loss.Number("trimPercent"), loss.Number("edgesPercent"),
        loss.Number("rowFitPercent"));
}
