namespace FeltNest.Ball.Rules;

/// <summary>How well a number of the rule table is known.</summary>
internal enum RuleMark
{
    /// <summary>Read in a published table that quotes the rule book; the rule book itself was not read.</summary>
    Quoted,

    /// <summary>From memory: no text was read.</summary>
    Memory,
}
