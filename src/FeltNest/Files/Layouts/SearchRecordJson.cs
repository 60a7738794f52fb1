using FeltNest.Files.Json;
using FeltNest.Layout;
using FeltNest.Layout.Quality;
using static FeltNest.Files.Layouts.LayoutSearchFields;

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
            return new SearchRecord
            {
                Seed = 1,
                Effort = 1,
                CutShort = false,
                Method = "not stated",
                ProvedOnGrid = null,
                PlaneUtilisationPercent = 0,
                LeastGapMm = 0,
                FreerRowsPanelsPerMetre = null,
            };
        }

        JsonFields? grid = search.OptionalObject(SearchFields.ProvedOnGrid);
        return new SearchRecord
        {
            Seed = search.Whole(SearchFields.Seed),
            Effort = search.Whole(SearchFields.Effort),
            CutShort = search.Flag(SearchFields.CutShort),
            Method = search.Text(SearchFields.Method),
            ProvedOnGrid = grid is null
                ? null
                : new GridProof
                {
                    AngleStepDeg = grid.Number(ProvedOnGridFields.AngleStepDeg),
                    PitchStepMm = grid.Number(ProvedOnGridFields.PitchStepMm),
                },
            PlaneUtilisationPercent = search.OptionalNumber(SearchFields.PlaneUtilisationPercent) ?? 0,
            LeastGapMm = search.OptionalNumber(SearchFields.LeastGapMm) ?? 0,
            FreerRowsPanelsPerMetre = search.OptionalNumber(SearchFields.FreerRowsPanelsPerMetre),
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

    private static LossSplit Loss(JsonFields loss) => new()
    {
        ShapePercent = loss.Number(LossFields.ShapePercent),
        GapPercent = loss.Number(LossFields.GapPercent),
        TrimPercent = loss.Number(LossFields.TrimPercent),
        EdgesPercent = loss.Number(LossFields.EdgesPercent),
        RowFitPercent = loss.Number(LossFields.RowFitPercent),
    };
}
