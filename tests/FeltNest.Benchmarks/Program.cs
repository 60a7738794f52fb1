using System.Globalization;
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

if (args is ["orders-stopped", var orders, var rolls])
{
    OrderStops.Print(int.Parse(orders, CultureInfo.InvariantCulture), int.Parse(rolls, CultureInfo.InvariantCulture));
    return;
}

if (args is ["orders-long", var effort])
{
    OrderLong.Print(int.Parse(effort, CultureInfo.InvariantCulture));
    return;
}

if (args is ["book", var place, var tickets])
{
    BookSize.Print(place, int.Parse(tickets, CultureInfo.InvariantCulture));
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
