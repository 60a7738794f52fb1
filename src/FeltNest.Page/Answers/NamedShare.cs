namespace FeltNest.Page.Answers;

/// <summary>A share of the felt.</summary>
internal sealed record NamedShare(string Name, double Percent);
