using FeltNest.Cli;

return await CommandLine.RunAsync(args, Console.Out, Console.Error);
