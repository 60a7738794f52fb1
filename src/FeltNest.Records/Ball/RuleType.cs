namespace FeltNest.Ball;

/// <summary>Row of the rule table a ball is meant for.</summary>
public enum RuleType
{
    /// <summary>Fast.</summary>
    Type1,

    /// <summary>Medium.</summary>
    Type2,

    /// <summary>Slow, larger.</summary>
    Type3,

    /// <summary>For play at high altitude.</summary>
    HighAltitude,

    /// <summary>Stage 1, green.</summary>
    Stage1,

    /// <summary>Stage 2, orange.</summary>
    Stage2,

    /// <summary>Stage 3, red, felt covered.</summary>
    Stage3Felt,

    /// <summary>Stage 3, red, foam.</summary>
    Stage3Foam,

    /// <summary>No rule is asked for.</summary>
    None,
}
