using System.Reflection;
using FeltNest.Ball;
using FeltNest.Files.Balls;

namespace FeltNest.Page.Inputs;

/// <summary>The balls that the page offers: those given on start, else those that come with the program.</summary>
internal sealed class BallShelf
{
    private const string Prefix = "balls/", Ending = ".json";

    private readonly List<(string Name, BallSpec Ball)> balls = [];

    /// <summary>Names in order, the first one usual.</summary>
    public IReadOnlyList<string> Names => [.. balls.Select(b => b.Name)];

    /// <summary>A ball of the shelf.</summary>
    public BallSpec this[string name] => balls.First(b => b.Name == name).Ball;

    /// <summary>The balls of some files.</summary>
    /// <exception cref="InputException">A file is no sound ball, or two have one name.</exception>
    public static BallShelf Of(IEnumerable<string> files)
    {
        BallShelf shelf = new();
        foreach (string file in files)
        {
            string name = Path.GetFileNameWithoutExtension(file);
            if (shelf.balls.Exists(b => b.Name == name))
            {
                throw new InputException(file, null, $"two balls are called {name}: the page tells balls by their file's name");
            }

            shelf.balls.Add((name, BallReader.Read(file).Ball));
        }

        return shelf;
    }

    /// <summary>The balls that come with the program, type-2 first.</summary>
    public static BallShelf Shipped()
    {
        Assembly here = typeof(BallShelf).Assembly;
        string[] names = [.. here.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)).Select(n => n[Prefix.Length..^Ending.Length])];
        BallShelf shelf = new();

        // The reader takes files: the embedded ones stand in a folder of their own for as long as it reads.
        DirectoryInfo folder = Directory.CreateTempSubdirectory("feltnest-balls-");
        try
        {
            foreach (string name in names.OrderBy(n => n != "type-2").ThenBy(n => n, StringComparer.Ordinal))
            {
                string path = Path.Combine(folder.FullName, name + Ending);
                using (Stream from = here.GetManifestResourceStream(Prefix + name + Ending)!)
                using (FileStream to = File.Create(path))
                {
                    from.CopyTo(to);
                }

                shelf.balls.Add((name, BallReader.Read(path).Ball));
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }

        return shelf;
    }
}
