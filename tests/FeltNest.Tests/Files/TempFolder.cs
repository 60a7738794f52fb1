namespace FeltNest.Tests.Files;

/// <summary>A folder of its own for a test, gone afterwards.</summary>
public sealed class TempFolder : IDisposable
{
    public string Root { get; } = Directory.CreateTempSubdirectory("feltnest-test-").FullName;

    public string Path(string name) => System.IO.Path.Combine(Root, name);

    public string Write(string name, string text)
    {
        string path = Path(name);
        File.WriteAllText(path, text);
        return path;
    }

    public void Dispose() => Directory.Delete(Root, recursive: true);
}
