using FeltNest.Ball;
using FeltNest.Files;
using FeltNest.Files.Balls;

namespace FeltNest.Page.Inputs;

/// <summary>The balls that the page offers: those given on start, else those that come with the program.</summary>
internal sealed class BallShelf
{
    private readonly List<(string Name, Func<IReadOnlyList<BallChange>, BallInput> Read)> balls = [];

    /// <summary>Names in order, the first one usual.</summary>
    public IReadOnlyList<string> Names => [.. balls.Select(b => b.Name)];

    /// <summary>The ball that is asked for.</summary>
    /// <exception cref="InputException">A value does not go with the ball.</exception>
    public BallSpec Of(PageCover cover) => balls.First(b => b.Name == cover.Ball).Read(cover.Changes).Ball;

    /// <summary>The balls of some files, as they are now.</summary>
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

            InputText text = InputText.OfFile(file);
            _ = BallReader.Read(text);
            shelf.balls.Add((name, changes => BallReader.Read(text, changes)));
        }

        return shelf;
    }

    /// <summary>The balls that come with the program, the example first.</summary>
    public static BallShelf Shipped()
    {
        BallShelf shelf = new();
        foreach (string name in ShippedBalls.Names)
        {
            shelf.balls.Add((name, changes => ShippedBalls.Read(name, changes)));
        }

        return shelf;
    }
}
