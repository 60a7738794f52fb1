namespace FeltNest.Runs;

/// <summary>Adds to a fault the file it stands in, where what found it cannot know.</summary>
internal static class NamedInput
{
    /// <summary>The work; a fault in a field of the file is told with the file's name.</summary>
    /// <exception cref="InputException">As the work throws it, with the file.</exception>
    public static T Of<T>(string file, Func<T> work)
    {
        try
        {
            return work();
        }
        catch (InputException error) when (error is { File: null, Asked: null })
        {
            throw error.InFile(file);
        }
    }
}
