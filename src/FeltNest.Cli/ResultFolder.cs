namespace FeltNest.Cli;

/// <summary>A folder that takes one set of result files: nothing is overwritten unless that is asked for, and no file is ever seen half
/// written.</summary>
internal sealed class ResultFolder
{
    private readonly string folder;
    private readonly bool overwrite;

    /// <summary>A folder by its path; it need not exist.</summary>
    /// <param name="folder">Where the files go.</param>
    /// <param name="overwrite">Whether existing files may be replaced.</param>
    public ResultFolder(string folder, bool overwrite)
    {
        this.folder = folder;
        this.overwrite = overwrite;
    }

    /// <summary>Finds out, before any long work, whether the files named can be written; leaves no trace.</summary>
    /// <exception cref="InputException">One of them exists and may not be replaced, or the folder cannot be made or written.</exception>
    public void Prepare(IEnumerable<string> names)
    {
        foreach (string name in names)
        {
            string path = Path.Combine(folder, name);
            if (Directory.Exists(path))
            {
                throw new InputException(path, null, "is a folder where a result file is to be written");
            }

            if (File.Exists(path) && !overwrite)
            {
                throw new InputException(path, null, "exists already: give --force to overwrite it, or another --out");
            }
        }

        Guarded(Probe);
    }

    /// <summary>Writes all files: first each to a temporary file beside its place, then all are renamed.</summary>
    /// <returns>Paths of the files written.</returns>
    /// <exception cref="InputException">A file exists and may not be replaced, or the folder cannot be written.</exception>
    public IReadOnlyList<string> Write(IReadOnlyList<(string Name, byte[] Content)> files)
    {
        Prepare(files.Select(file => file.Name));
        string[] temporary = [.. files.Select(file => TemporaryName(file.Name))];
        string[] final = [.. files.Select(file => Path.Combine(folder, file.Name))];
        Guarded(() =>
        {
            Directory.CreateDirectory(folder);
            try
            {
                for (int i = 0; i < files.Count; i++)
                {
                    File.WriteAllBytes(temporary[i], files[i].Content);
                }

                for (int i = 0; i < files.Count; i++)
                {
                    File.Move(temporary[i], final[i], overwrite);
                }
            }
            finally
            {
                foreach (string path in temporary)
                {
                    File.Delete(path);
                }
            }
        });
        return final;
    }

    // Writes an empty file and takes it away again, with every folder that had to be made for it: a run that finds no answer leaves nothing
    // behind.
    private void Probe()
    {
        List<string> made = [];
        for (string? at = Path.GetFullPath(folder); at is not null && !Directory.Exists(at); at = Path.GetDirectoryName(at))
        {
            made.Add(at);
        }

        Directory.CreateDirectory(folder);
        string probe = TemporaryName("probe");
        File.WriteAllBytes(probe, []);
        File.Delete(probe);
        made.ForEach(Directory.Delete);
    }

    private string TemporaryName(string name) => Path.Combine(folder, $".{name}.{Environment.ProcessId}.tmp");

    private void Guarded(Action work)
    {
        try
        {
            work();
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            throw new InputException(folder, null, $"cannot be written ({PlainLine.Of(error.Message)}): choose another --out", error);
        }
    }
}
