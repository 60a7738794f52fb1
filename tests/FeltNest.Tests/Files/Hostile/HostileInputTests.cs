using System.Diagnostics;
using System.Globalization;
using Xunit;

namespace FeltNest.Tests.Files.Hostile;

/// <summary>Readers of spoiled files: each returns or throws an error of ours, in one line, in little time and memory. A file that fails is
/// found again by reader and number.</summary>
public sealed class HostileInputTests : IDisposable
{
    // Far above what any of these files needs (a few megabytes), far below what a machine has.
    private const long MostBytes = 1L << 30;

    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(30);

    private readonly TempFolder folder = new();

    public static TheoryData<string> Names => [.. HostileReaders.All.Select(reader => reader.Name)];

    public void Dispose() => folder.Dispose();

    [Theory]
    [MemberData(nameof(Names))]
    public void A_spoiled_file_is_read_or_told_in_one_line(string name)
    {
        (_, string ending, Action<string> read, Func<byte[][]> sound) = HostileReaders.All.Single(reader => reader.Name == name);
        byte[][] files = sound();
        string path = folder.Path("spoiled" + ending);
        List<string> faults = [];
        int told = 0;
        for (int number = 0; number < Runs.Count(60); number++)
        {
            byte[] bytes = new HostileMutator(number, files).Next();
            File.WriteAllBytes(path, bytes);
            long before = GC.GetAllocatedBytesForCurrentThread();
            Stopwatch watch = Stopwatch.StartNew();
            (string? message, string? fault) = Outcome(() => read(path));
            told += message is null ? 0 : 1;
            fault ??= watch.Elapsed > Longest ? $"took {watch.Elapsed.TotalSeconds:0} s" : null;
            fault ??= GC.GetAllocatedBytesForCurrentThread() - before > MostBytes
                ? $"took {(GC.GetAllocatedBytesForCurrentThread() - before) >> 20} MB"
                : null;
            if (fault is not null && faults.TrueForAll(known => known[(known.IndexOf(':', StringComparison.Ordinal) + 1)..] != fault))
            {
                faults.Add(string.Create(CultureInfo.InvariantCulture, $"{number}:{fault}"));
            }
        }

        Assert.True(faults.Count == 0, $"{name}\n{string.Join('\n', faults)}");
        Assert.True(told > 0, "no file was refused: nothing was spoiled");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_sound_file_is_read_the_same_under_decimal_commas(string name)
    {
        (_, string ending, Action<string> read, Func<byte[][]> sound) = HostileReaders.All.Single(reader => reader.Name == name);
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo commas = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        (commas.NumberFormat.NumberDecimalSeparator, commas.NumberFormat.NumberGroupSeparator, commas.NumberFormat.NegativeSign) = (
            ",", ".", "\u2212");
        commas.DateTimeFormat.ShortDatePattern = "dd.MM.yyyy";
        byte[][] files = sound();
        string path = folder.Path("file" + ending);
        for (int number = 0; number < files.Length + 20; number++)
        {
            File.WriteAllBytes(path, number < files.Length ? files[number] : new HostileMutator(number, files).Next());
            (string?, string?) usual = Outcome(() => read(path));
            (string?, string?) other;
            CultureInfo.CurrentCulture = commas;
            try
            {
                other = Outcome(() => read(path));
            }
            finally
            {
                CultureInfo.CurrentCulture = before;
            }

            Assert.Equal(usual, other);
        }
    }

    private static (string? Message, string? Fault) Outcome(Action read)
    {
        try
        {
            read();
            return (null, null);
        }
        catch (FeltNestException error)
        {
            return (error.Message, PlainLineOf(error.Message));
        }
        catch (Exception error)
        {
            string? place = error.StackTrace?.Split('\n').FirstOrDefault(line => line.Contains("FeltNest.", StringComparison.Ordinal));
            return (null, $"{error.GetType().Name} {error.Message.Split('\n')[0]} {place?.Trim()}");
        }
    }

    // What is wrong with a message, or null: letters that move the cursor, break the line or turn the writing round, or no end to it.
    private static string? PlainLineOf(string message) =>
        message.Any(c =>
            char.IsControl(c) || c is >= '\u200E' and <= '\u200F' or >= '\u2028' and <= '\u202E' or >= '\u2066' and <= '\u2069' or '\uFEFF')
            ? "control characters in a message"
        : message.Length > 4000 ? "a message of more than 4000 letters"
        : string.IsNullOrWhiteSpace(message) ? "an empty message" : null;
}
