using System.Text;

namespace FeltNest.Cli;

/// <summary>The message stream: where it cannot be written (a full disk, a closed terminal), messages are lost and the run goes
/// on.</summary>
/// <param name="open">Opens the stream; may fail where there is none.</param>
internal sealed class KeptMessages(Func<TextWriter> open) : TextWriter
{
    private readonly Lock gate = new();
    private readonly Lazy<TextWriter> inner = new(() => Opened(open));

    /// <inheritdoc/>
    public override Encoding Encoding => Encoding.UTF8;

    /// <inheritdoc/>
    public override void Write(char value) => Kept(writer => writer.Write(value));

    /// <inheritdoc/>
    public override void Write(string? value) => Kept(writer => writer.Write(value));

    /// <inheritdoc/>
    public override void Write(char[] buffer, int index, int count) => Kept(writer => writer.Write(buffer, index, count));

    /// <inheritdoc/>
    public override void WriteLine(string? value) => Kept(writer => writer.WriteLine(value));

    /// <inheritdoc/>
    public override void Flush() => Kept(writer => writer.Flush());

    private void Kept(Action<TextWriter> write)
    {
        lock (gate)
        {
            try
            {
                write(inner.Value);
            }
            catch (Exception error) when (IsLost(error))
            {
                // Nobody can be told that nobody can be told.
            }
        }
    }

    private static TextWriter Opened(Func<TextWriter> open)
    {
        try
        {
            return open();
        }
        catch (Exception error) when (IsLost(error) || error is TypeInitializationException)
        {
            return Null;
        }
    }

    private static bool IsLost(Exception error) => error is IOException or UnauthorizedAccessException or ObjectDisposedException;
}
