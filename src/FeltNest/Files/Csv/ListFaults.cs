namespace FeltNest.Files.Csv;

/// <summary>The faults of one list by its lines, to be told together.</summary>
/// <param name="file">The file.</param>
internal sealed class ListFaults(string file)
{
    // Faults of one list that are told: a page. More are counted, up to an end.
    private const int MostTold = 40;
    private const int MostCounted = 1000;

    private readonly SortedDictionary<int, List<InputException>> byLine = [];
    private int count;

    /// <summary>Whether there are so many that looking for more is no use.</summary>
    public bool IsFull => count >= MostCounted;

    /// <summary>Adds a fault of a line; where one of the same column is there it takes its place, as the later look knows more.</summary>
    public void Add(int line, InputException fault)
    {
        if (!byLine.TryGetValue(line, out List<InputException>? there))
        {
            byLine.Add(line, there = []);
        }

        int same = there.FindIndex(other => other.Field == fault.Field && other.File == fault.File);
        if (same >= 0)
        {
            there[same] = fault;
            return;
        }

        there.Add(fault);
        count++;
    }

    /// <summary>Refuses a list with faults: as one, with the others behind it.</summary>
    /// <exception cref="InputException">There are any.</exception>
    public void Require()
    {
        InputException[] all = [.. byLine.Values.SelectMany(line => line)];
        if (all.Length == 0)
        {
            return;
        }

        string more = IsFull ? $"at least {all.Length - MostTold}" : $"{all.Length - MostTold}";
        throw all[0].With(all.Length <= MostTold
            ? all[1..]
            : [.. all[1..MostTold], new InputException(file, null, $"and {more} more faults")]);
    }
}
