using FeltNest.Cli;
using FeltNest.Cli.Ending;

HandOver handOver = new();
KeptMessages messages = new(() => Console.Error);
Terminal terminal = new() { Results = Console.Out, Messages = messages, HandOver = handOver };
using StopSignals signals = new(handOver, terminal.Say, Environment.Exit);
return await CommandLine.RunAsync(args, terminal, signals.Token);
