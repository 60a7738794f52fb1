namespace FeltNest.Die.Proof;

/// <summary>The verdict in words.</summary>
internal static class ConformityWords
{
    /// <summary>What a measurement proves, in capitals, as it heads a sheet.</summary>
    public static string Of(Conformity verdict) => verdict switch
    {
        Conformity.Conforms => "CONFORMS",
        Conformity.DoesNotConform => "DOES NOT CONFORM",
        _ => "UNDECIDED",
    };
}
