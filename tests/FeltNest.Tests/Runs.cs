namespace FeltNest.Tests;

/// <summary>How long property tests run: short by default, longer with FELTNEST_TEST_RUNS set to a factor.</summary>
internal static class Runs
{
    internal static long Count(int usual) =>
        usual * (long.TryParse(Environment.GetEnvironmentVariable("FELTNEST_TEST_RUNS"), out long factor) ? Math.Max(1, factor) : 1);
}
