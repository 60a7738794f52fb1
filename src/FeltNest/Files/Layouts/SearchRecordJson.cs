using FeltNest.Files.Json;
using FeltNest.Layout;
using FeltNest.Layout.Quality;
using static FeltNest.Files.Layouts.LayoutDocument;

namespace FeltNest.Files.Layouts;

/// <summary>The <c>search</c> object of a layout file.</summary>
internal static class SearchRecordJson
{
    /// <summary>Writes how the layout was found.</summary>
    internal static void Write(JsonOutput json, SearchRecord search)
    {
        json
            .Number(SearchFields.Seed, search.Seed)
            .Number(SearchFields.Effort, search.Effort)
            .Flag(SearchFields.CutShort, search.CutShort)
            .Text(SearchFields.Method, search.Method);
        json.ObjectOrNull(SearchFields.ProvedOnGrid, search.ProvedOnGrid, (proof, grid) => proof
            .Number(ProvedOnGridFields.AngleStepDeg, grid.AngleStepDeg).Number(ProvedOnGridFields.PitchStepMm, grid.PitchStepMm));
        json.Number(SearchFields.PlaneUtilisationPercent, search.PlaneUtilisationPercent)
            .Number(SearchFields.UpperBoundPercent, search.UpperBoundPercent > 0 ? search.UpperBoundPercent : null)
            .Number(SearchFields.LeastGapMm, search.LeastGapMm)
            .Number(SearchFields.FreerRowsPanelsPerMetre, search.FreerRowsPanelsPerMetre);
        if (search.Loss is { } loss)
        {
            json.Object(SearchFields.Loss, item => item
                .Number(LossFields.ShapePercent, loss.ShapePercent)
                .Number(LossFields.GapPercent, loss.GapPercent)
                .Number(LossFields.TrimPercent, loss.TrimPercent)
                .Number(LossFields.EdgesPercent, loss.EdgesPercent)
                .Number(LossFields.RowFitPercent, loss.RowFitPercent));
        }

        json.Objects(SearchFields.Methods, search.Methods, (item, reach) => item
            .Text(MethodFields.Method, reach.Method)
            .Number(MethodFields.PanelsPerMetre, reach.PanelsPerMetre)
            .Number(MethodFields.Bands, reach.Bands));
        json.Objects(SearchFields.RuleCosts, search.RuleCosts, (item, cost) => item
            .Text(RuleCostFields.Rule, cost.Rule)
            .Number(RuleCostFields.PanelsPerMetreWithout, cost.PanelsPerMetreWithout)
            .Text(RuleCostFields.Words, cost.Words));
    }

    /// <summary>Reads it; a file may leave it out.</summary>
    /// <exception cref="InputException">Names the field, the value found and what is allowed.</exception>
    internal static SearchRecord Read(JsonFields top)
    {
        if (top.OptionalObject(LayoutDocument.Search) is not { } search)
        {
            return new SearchRecord(1, 1, false, "not stated", null, 0, 0, null);
        }

        JsonFields? grid = search.OptionalObject(SearchFields.ProvedOnGrid);
        return new SearchRecord(
            search.Whole(SearchFields.Seed), search.Whole(SearchFields.Effort), search.Flag(SearchFields.CutShort),
            search.Text(SearchFields.Method),
            grid is null
                ? null
                : new GridProof(grid.Number(ProvedOnGridFields.AngleStepDeg), grid.Number(ProvedOnGridFields.PitchStepMm)),
            search.OptionalNumber(SearchFields.PlaneUtilisationPercent) ?? 0, search.OptionalNumber(SearchFields.LeastGapMm) ?? 0,
            search.OptionalNumber(SearchFields.FreerRowsPanelsPerMetre))
        {
            UpperBoundPercent = search.OptionalNumber(SearchFields.UpperBoundPercent) ?? 0,
            Loss = search.OptionalObject(SearchFields.Loss) is { } loss ? Loss(loss) : null,
            Methods = [.. search.OptionalObjects(SearchFields.Methods).Select(Reach)],
            RuleCosts = [.. search.OptionalObjects(SearchFields.RuleCosts).Select(Cost)],
        };
    }

    private static MethodReach Reach(JsonFields item) => new(
        item.Text(MethodFields.Method), item.Number(MethodFields.PanelsPerMetre), item.Whole(MethodFields.Bands));

    private static RuleCost Cost(JsonFields item) => new(
        item.Text(RuleCostFields.Rule), item.Number(RuleCostFields.PanelsPerMetreWithout), item.Text(RuleCostFields.Words));

    private static LossSplit Loss(JsonFields loss) => new(
        loss.Number(LossFields.ShapePercent), loss.Number(LossFields.GapPercent), loss.Number(LossFields.TrimPercent),
        loss.Number(LossFields.EdgesPercent), loss.Number(LossFields.RowFitPercent));
}
