using Xunit;

namespace FeltNest.Tests.Endurance;

/// <summary>Tests that weigh the whole process run when nothing else does.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class AloneInProcess
{
    internal const string Name = "alone";
}
