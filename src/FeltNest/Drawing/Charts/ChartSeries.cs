namespace FeltNest.Drawing.Charts;

/// <summary>One line of a chart.</summary>
/// <param name="Name">Written at its right end.</param>
/// <param name="Values">One value a place of the x axis.</param>
/// <param name="Pen">How it is drawn.</param>
/// <param name="Level">True for a line that only marks a level: it has no dots.</param>
internal sealed record ChartSeries(string Name, IReadOnlyList<double> Values, Pen Pen, bool Level = false);
