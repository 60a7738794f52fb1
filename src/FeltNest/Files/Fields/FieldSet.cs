namespace FeltNest.Files.Fields;

/// <summary>The fields of one object, or the columns of one list, in the order in which they are written.</summary>
/// <param name="shared">Fields that stand in other objects too, first in order.</param>
internal sealed class FieldSet(params FieldSet[] shared)
{
    private readonly List<Field> fields = [.. shared.SelectMany(set => set.fields)];

    /// <summary>The fields in order.</summary>
    public IReadOnlyList<Field> All => fields;

    /// <summary>Their names in order.</summary>
    public IReadOnlyList<string> Names => [.. fields.Select(one => one.Name)];

    /// <summary>Two fields of which exactly one must stand in a file; empty for none such.</summary>
    public IReadOnlyList<Field> Either { get; private set; } = [];

    /// <summary>Adds a field, and gives it back.</summary>
    public T Add<T>(T field)
        where T : Field
    {
        fields.Add(field);
        return field;
    }

    /// <summary>Adds two fields of which exactly one must stand in a file.</summary>
    public void OneOf(Field first, Field second) => Either = [first, second];

    /// <summary>The number field of a name that is known only when it is written.</summary>
    public NumberField NumberOf(string name) => fields.OfType<NumberField>().First(field => field.Name == name);
}
