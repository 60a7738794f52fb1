namespace FeltNest.Files;

/// <summary>Names of the fields that the checks of layouts, roll plans, dies and plans of orders hold against something. A test spoils every
/// number of such files and sees that those of these names are found.</summary>
internal static class CheckedFields
{
    private static readonly string[] Layout = [];

    /// <summary>The names, by the kind of file; none for results whose own check says what it looks at.</summary>
    public static IEnumerable<string> Of(string schema) => schema switch
    {
        SchemaName.Layout => Layout,
        _ => [],
    };
}
