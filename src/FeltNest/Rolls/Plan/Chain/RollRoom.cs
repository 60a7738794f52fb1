using System.Globalization;

namespace FeltNest.Rolls.Plan.Chain;

/// <summary>Whether a roll is wide enough for a layout, and where it is not.</summary>
internal static class RollRoom
{
    // A roll this little narrower is wide enough, mm: rounding of a layout's own digits.
    private const double Slack = 1e-6;

    // Narrow parts named one by one.
    private const int MostNamed = 2;

    /// <summary>Width the strikes of a layout take with both trims, mm; a guide that plays may bring them nearer to the lower
    /// selvedge.</summary>
    public static double NeededMm(RollRequest request) => NeededMm(request, StrikePattern.Of(request.Layout, request.RepeatsPerStrike));

    /// <summary>Greatest width of the part that is to be cut, mm.</summary>
    public static double WidestMm(RollRequest request) => Widths(request).Max();

    /// <summary>Least width of the part that is to be cut, mm.</summary>
    public static double NarrowestMm(RollRequest request) => Widths(request).Min();

    // At the readings between the two ends of what is to be cut, and at these ends.
    private static IEnumerable<double> Widths(RollRequest request) =>
        request.Roll.Widths.Where(w => w.XMm > request.FromMm && w.XMm < request.Roll.LengthMm).Select(w => w.WidthMm)
            .Append(request.Roll.WidthAt(request.FromMm)).Append(request.Roll.WidthAt(request.Roll.LengthMm));

    /// <summary>True where the roll takes the layout in its widest place at least.</summary>
    public static bool Takes(RollRequest request) => WidestMm(request) >= NeededMm(request) - Slack;

    /// <summary>Refuses a roll that is nowhere wide enough.</summary>
    /// <exception cref="NoAnswerException">Says the widths and what would work.</exception>
    public static void Require(RollRequest request)
    {
        if (!Takes(request))
        {
            double needed = NeededMm(request);
            double widest = WidestMm(request);
            throw new NoAnswerException(string.Create(
                CultureInfo.InvariantCulture,
                $"roll {request.Roll.Name} is {widest:0.###} mm wide at its widest, and this layout needs {needed:0.###} mm of width "
                    + $"with its trims: a layout made for {Math.Floor(widest * 10) / 10:0.#} mm or less, or a roll of {needed:0.###} mm "
                    + $"or more, would work"));
        }
    }

    /// <summary>What nobody may overlook where panels of a plan are lost because the roll is too narrow in places; null where none
    /// are.</summary>
    public static string? Warning(RollPlan plan)
    {
        int lost = plan.LostPanels(LossCause.Width);
        IReadOnlyList<(double FromMm, double ToMm)> parts = lost == 0 ? [] : Narrow(plan);
        if (parts.Count == 0)
        {
            return null;
        }

        string places = string.Join(
            ", ", parts.Take(MostNamed).Select(p => FormattableString.Invariant($"{p.FromMm / 1000:0.00} to {p.ToMm / 1000:0.00} m")));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"ROLL TOO NARROW at {places}{(parts.Count > MostNamed ? $" and {parts.Count - MostNamed} places more" : string.Empty)}: "
                + $"{lost} panels lost; {plan.Request.Roll.LeastWidthMm:0.#} mm wide, {NeededMm(plan.Request, plan.Pattern):0.#} mm "
                + $"needed");
    }

    /// <summary>Parts of the cloth to be cut that are too narrow, in order along the roll, mm.</summary>
    public static IReadOnlyList<(double FromMm, double ToMm)> Narrow(RollPlan plan)
    {
        RollRequest request = plan.Request;
        List<(double FromMm, double ToMm)> parts = [];
        foreach (XRange part in LossMap.Narrow(request.Roll, NeededMm(request, plan.Pattern) - Slack))
        {
            double from = Math.Max(part.From, request.FromMm);
            double to = Math.Min(part.To, request.Roll.LengthMm);
            if (to <= from)
            {
                continue;
            }

            if (parts.Count > 0 && from <= parts[^1].ToMm + Slack)
            {
                parts[^1] = (parts[^1].FromMm, to);
            }
            else
            {
                parts.Add((from, to));
            }
        }

        return parts;
    }

    private static double NeededMm(RollRequest request, StrikePattern pattern)
    {
        double spare = Math.Max(0, pattern.Panels.Min(p => p.MinY) - request.Layout.Trims.LowerMm);
        return pattern.Panels.Max(p => p.MaxY) + request.Layout.Trims.UpperMm - Math.Min(spare, request.GuidePlayMm);
    }
}
