using BenchmarkDotNet.Running;
using FeltNest.Benchmarks;

if (args is ["table", var ball])
{
    LayoutTable.Print(ball);
    return;
}

if (args is ["orders", var size])
{
    OrderTable.Print(size);
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
