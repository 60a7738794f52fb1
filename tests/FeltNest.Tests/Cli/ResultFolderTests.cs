using FeltNest.Cli;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli;

public sealed class ResultFolderTests : IDisposable
{
    private static readonly (string, byte[])[] Two = [("a.txt", [1]), ("b.txt", [2])];

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_new_folder_is_made_and_holds_the_files_and_nothing_else()
    {
        IReadOnlyList<string> written = new ResultFolder(folder.Path("x/y"), overwrite: false).Write(Two);

        Assert.Equal([folder.Path("x/y/a.txt"), folder.Path("x/y/b.txt")], written);
        Assert.Equal(["a.txt", "b.txt"], Directory.GetFiles(folder.Path("x/y")).Select(Path.GetFileName).Order());
    }

    [Fact]
    public void One_existing_file_keeps_the_whole_set_from_being_written()
    {
        folder.Write("b.txt", "mine");

        InputException error = Assert.Throws<InputException>(() => new ResultFolder(folder.Root, overwrite: false).Write(Two));

        Assert.Equal($"{folder.Path("b.txt")}: exists already: give --force to overwrite it, or another --out", error.Message);
        Assert.Equal("mine", File.ReadAllText(folder.Path("b.txt")));
        Assert.False(File.Exists(folder.Path("a.txt")));
    }

    [Fact]
    public void Overwriting_is_done_when_asked_for()
    {
        folder.Write("b.txt", "mine");

        new ResultFolder(folder.Root, overwrite: true).Write(Two);

        Assert.Equal([2], File.ReadAllBytes(folder.Path("b.txt")));
        Assert.Equal(2, Directory.GetFileSystemEntries(folder.Root).Length);
    }

    [Fact]
    public void A_place_that_cannot_be_written_is_told_before_any_work()
    {
        string file = folder.Write("file", "not a folder");

        InputException error =
            Assert.Throws<InputException>(() => new ResultFolder(Path.Combine(file, "out"), overwrite: false).Prepare(["a.txt"]));

        Assert.StartsWith($"{file}/out: cannot be written (", error.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', error.Message);
    }

    [Fact]
    public void A_read_only_folder_is_told_in_one_line()
    {
        // Whoever runs the tests as the superuser may write anywhere; the kernel's own read-only tree refuses even that user.
        const string readOnly = "/proc/feltnest";

        Assert.StartsWith(
            $"{readOnly}: cannot be written (",
            Assert.Throws<InputException>(() => new ResultFolder(readOnly, false).Prepare(["a"])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_in_the_place_of_a_file_is_told()
    {
        Directory.CreateDirectory(folder.Path("a.txt"));

        Assert.Equal(
            $"{folder.Path("a.txt")}: is a folder where a result file is to be written",
            Assert.Throws<InputException>(() => new ResultFolder(folder.Root, overwrite: true).Write(Two)).Message);
    }
}
