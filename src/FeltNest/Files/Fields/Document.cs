namespace FeltNest.Files.Fields;

/// <summary>One kind of JSON file.</summary>
internal sealed record Document
{
    /// <summary>Name by which files say what they are: <c>feltnest/press/1</c>.</summary>
    public required string Schema { get; init; }

    /// <summary>What it is, in words.</summary>
    public required string Title { get; init; }

    /// <summary>Its fields, without those that every document may have.</summary>
    public required FieldSet Fields { get; init; }

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
