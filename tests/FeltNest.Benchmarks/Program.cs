using BenchmarkDotNet.Running;
using FeltNest.Benchmarks;

if (args is ["table", var ball])
{
    LayoutTable.Print(ball);
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
