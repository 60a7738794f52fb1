namespace FeltNest.Files.Fields;

/// <summary>A word of an enumeration.</summary>
/// <typeparam name="T">The enumeration.</typeparam>
internal sealed class EnumField<T>(string name, string meaning = "") : WordField(name, EnumWord.All<T>(), meaning)
    where T : struct, Enum;
