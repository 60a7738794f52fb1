using System.Diagnostics;
using System.Globalization;

namespace FeltNest.Tests.Endurance;

/// <summary>What a process holds: memory, files and sockets, threads.</summary>
internal readonly record struct ProcessWeight(double LiveMb, double ResidentMb, int Handles, int Threads)
{
    /// <summary>This process, with everything collected that nobody holds.</summary>
    internal static ProcessWeight OfThis()
    {
        using Process own = Process.GetCurrentProcess();
        double live = GC.GetTotalMemory(forceFullCollection: true) / 1048576.0;
        return Of(own) with { LiveMb = live };
    }

    /// <summary>Another process; what its collector would free is not known from outside.</summary>
    internal static ProcessWeight Of(Process process)
    {
        process.Refresh();
        return new(double.NaN, process.WorkingSet64 / 1048576.0, process.HandleCount, process.Threads.Count);
    }

    /// <summary>One line for a report.</summary>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{(double.IsNaN(LiveMb) ? string.Empty : $"{LiveMb:0.0} MB live, ")}{ResidentMb:0} MB resident, {Handles} handles, "
                + $"{Threads} threads");
}
