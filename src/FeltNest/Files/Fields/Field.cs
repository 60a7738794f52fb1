using System.Text.Json.Nodes;

namespace FeltNest.Files.Fields;

/// <summary>One field of a document, or one column of a list: the one place that says what it is called, what it may hold and what it
/// means. Readers, writers, schemas and the reference page take it from here.</summary>
/// <param name="name">Name in the file.</param>
/// <param name="meaning">What it means, in a clause without its unit; empty where the name says it all.</param>
internal abstract class Field(string name, string meaning)
{
    /// <summary>Name in the file.</summary>
    public string Name => name;

    /// <summary>What it means; empty where the name says it all.</summary>
    public string Meaning => meaning;

    /// <summary>Whether it may be left out.</summary>
    public bool Optional { get; init; }

    /// <summary>Whether null may stand there.</summary>
    public bool OrNull { get; init; }

    /// <summary>Whether a line of a list may leave it blank though the list must have the column.</summary>
    public bool MayBeBlank { get; init; }

    /// <summary>What counts where it is left out, in words, where that is no fixed value; null for nothing.</summary>
    public string? Otherwise { get; init; }

    /// <summary>What is allowed, in words, where that hangs on other fields; null where the description itself says it.</summary>
    public string? Allowed { get; init; }

    /// <summary>Whether a file must have it.</summary>
    public bool IsRequired => !Optional && Fallback is null && Otherwise is null;

    /// <summary>Unit of its numbers; empty where there is none.</summary>
    public virtual string UnitWord => string.Empty;

    /// <summary>The fixed value that counts where it is left out, or null.</summary>
    public virtual JsonNode? Fallback => null;

    /// <summary>What kind of value it is, for the reference page.</summary>
    public abstract string Kind { get; }

    /// <summary>What is allowed, for the reference page.</summary>
    public string RangeWords => Allowed ?? OwnRange;

    /// <summary>The fields inside it, or null.</summary>
    public virtual FieldSet? Inner => null;

    /// <summary>What stands behind its name in paths of fields inside it.</summary>
    public virtual string PathMark => string.Empty;

    /// <summary>What is allowed as the description says it.</summary>
    protected virtual string OwnRange => string.Empty;

    /// <summary>What a schema says of its value, without null, default and meaning.</summary>
    internal abstract JsonObject ValueSchema();
}
