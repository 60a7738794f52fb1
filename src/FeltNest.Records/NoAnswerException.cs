namespace FeltNest;

/// <summary>Sound input that has no answer, such as a panel wider than the usable width: the message says what would work.</summary>
public sealed class NoAnswerException : FeltNestException
{
    /// <summary>An error with the bound that failed and what would work.</summary>
    public NoAnswerException(string message)
        : base(message)
    {
    }
}
