using BenchmarkDotNet.Running;
using FeltNest.Benchmarks;

if (args is ["table", var ball])
{
    LayoutTable.Print(ball);
    return;
}

if (args is ["orders", var size, ..])
{
    OrderTable.Print(size, args.Length > 2 ? args[2] : null);
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
