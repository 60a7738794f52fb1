using FeltNest.Ball.Ranges;
using FeltNest.Files.Balls;

namespace FeltNest.Page.Inputs;

/// <summary>Turns an error of the library into a fault of the field it is about.</summary>
internal static class PageFault
{
    // Fields of a ball, of costs and of offers that the page has a field for.
    private static readonly Dictionary<string, string> Fields = new()
    {
        [BallRanges.CoreDiameter.Field] = "core",
        [BallRanges.CementThickness.Field] = "cement",
        [BallRanges.FeltThickness.Field] = "felt",
        [BallChange.WaistField] = "waist",
        [BallRanges.MaxEdgeCompression.Field] = "edgeLimit",
        ["massPerAreaGsm"] = "priceUnit",
        ["felt.massPerAreaGsm"] = "priceUnit",
        ["currency"] = "currency",
    };

    /// <summary>The fault; what belongs to no field belongs to the page.</summary>
    public static FieldFault Of(FeltNestException error)
    {
        if (error is not InputException { Field: { } named } input)
        {
            return new FieldFault { Field = "page", Problem = error.Message };
        }

        string? field = input.Asked is { } asked ? Asked(asked) : Fields.GetValueOrDefault(named);
        return field is null
            ? new FieldFault { Field = "page", Problem = $"{named}: {input.Problem}" }
            : new FieldFault { Field = field, Problem = input.Problem };
    }

    private static string? Asked(AskedFor asked) => asked switch
    {
        AskedFor.RollWidth => "width",
        AskedFor.EdgeTrims => "lower",
        AskedFor.Gap => "gap",
        AskedFor.WarpAngle or AskedFor.WarpTolerance => "warp",
        AskedFor.Rows => "rows",
        AskedFor.Effort => "effort",
        AskedFor.Offers => "offers",
        _ => null,
    };
}
