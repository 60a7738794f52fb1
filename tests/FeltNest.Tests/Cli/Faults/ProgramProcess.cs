using System.Diagnostics;

namespace FeltNest.Tests.Cli.Faults;

/// <summary>The program in a process of its own, to be killed, interrupted or starved.</summary>
internal static class ProgramProcess
{
    /// <summary>The program as built.</summary>
    internal static string Program { get; } = Path.Combine(AppContext.BaseDirectory, "FeltNest.Cli.dll");

    /// <summary>Starts it.</summary>
    internal static Process Start(string program, IReadOnlyList<string> args, params (string Name, string Value)[] environment) =>
        StartTool("dotnet", [program, .. args], environment);

    /// <summary>Starts a tool of the machine.</summary>
    internal static Process StartTool(string tool, IReadOnlyList<string> args, params (string Name, string Value)[] environment)
    {
        ProcessStartInfo start = new(tool, args) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach ((string name, string value) in environment)
        {
            start.Environment[name] = value;
        }

        return Process.Start(start)!;
    }

    /// <summary>Waits for its end.</summary>
    internal static async Task<CommandRun> Ended(Process process, CancellationToken stop)
    {
        Task<string> results = process.StandardOutput.ReadToEndAsync(stop);
        Task<string> messages = process.StandardError.ReadToEndAsync(stop);
        await process.WaitForExitAsync(stop);
        return new CommandRun(process.ExitCode, await results, await messages);
    }

    /// <summary>Runs it to its end.</summary>
    internal static async Task<CommandRun> Run(
        string program, IReadOnlyList<string> args, CancellationToken stop, params (string Name, string Value)[] environment)
    {
        using Process process = Start(program, args, environment);
        return await Ended(process, stop);
    }

    /// <summary>Sends a signal by its name.</summary>
    internal static async Task Signal(Process process, string signal, CancellationToken stop)
    {
        using Process kill = StartTool("kill", [$"-{signal}", process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]);
        await kill.WaitForExitAsync(stop);
    }
}
