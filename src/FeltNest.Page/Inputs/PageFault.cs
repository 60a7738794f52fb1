using FeltNest.Ball.Ranges;

namespace FeltNest.Page.Inputs;

/// <summary>Turns an error of the library into a fault of the field it is about.</summary>
internal static class PageFault
{
    private static readonly (string Part, string Field)[] Fields =
    [
        (BallRanges.CoreDiameter.Field, "core"), (BallRanges.CementThickness.Field, "cement"), (BallRanges.FeltThickness.Field, "felt"),
        ("seam.waistMm", "waist"), ("maxEdgeCompression", "edgeLimit"), ("gap", "gap"), ("warp", "warp"), ("rows", "rows"),
        ("width", "width"), ("edge", "lower"), ("mass", "priceUnit"),
        ("currency", "currency"),
    ];

    /// <summary>The fault; what belongs to no field belongs to the page.</summary>
    public static FieldFault Of(FeltNestException error)
    {
        if (error is not InputException { Field: { } named } input)
        {
            return new FieldFault("page", error.Message);
        }

        string field = Fields.FirstOrDefault(f => named.Contains(f.Part, StringComparison.OrdinalIgnoreCase)).Field ?? "page";
        return new FieldFault(field, field == "page" ? $"{named}: {input.Problem}" : input.Problem);
    }
}
