namespace FeltNest.Files.Fields;

/// <summary>One kind of JSON file.</summary>
/// <param name="Schema">Name by which files say what they are: <c>feltnest/press/1</c>.</param>
/// <param name="Title">What it is, in words.</param>
/// <param name="Fields">Its fields, without those that every document may have.</param>
internal sealed record Document(string Schema, string Title, FieldSet Fields)
{
    /// <summary>Field that says what the file is.</summary>
    public const string SchemaField = "schema";

    /// <summary>Field for editors: where the schema is.</summary>
    public const string EditorField = "$schema";

    /// <summary>Field that says where numbers come from.</summary>
    public const string SourcesField = "sources";

    /// <summary>Field that says which numbers have no source, and why they were taken.</summary>
    public const string AssumptionsField = "assumptions";

    /// <summary>Short name: <c>press</c>.</summary>
    public string Name => Schema.Split('/')[1];

    /// <summary>Names of all fields that may stand at the top.</summary>
    public IReadOnlyList<string> Known => [SchemaField, .. Fields.Names, EditorField, SourcesField, AssumptionsField];
}
