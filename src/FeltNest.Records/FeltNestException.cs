namespace FeltNest;

/// <summary>Base of all errors the library raises on purpose: each message is one clear line for the person who gave the input.</summary>
public abstract class FeltNestException : Exception
{
    /// <summary>An error with the line to show.</summary>
    protected FeltNestException(string message, Exception? inner = null)
        : base(PlainLine.Of(message), inner)
    {
    }
}
