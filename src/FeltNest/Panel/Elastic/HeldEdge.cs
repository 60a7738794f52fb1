using FeltNest.Panel.Domain;
using FeltNest.Panel.Shape;

namespace FeltNest.Panel.Elastic;

/// <summary>Where along the seam an edge is held at its limit.</summary>
internal static class HeldEdge
{
    // Places along the edge at which its stretch is looked at: every half degree of s.
    private const int Places = 720;

    /// <summary>Greatest compression along an edge, as a part of flat length.</summary>
    public static double GreatestCompression(FlatEdge edge) =>
        Enumerable.Range(0, Places).Max(i => 1 - edge.StretchAt(2 * Math.PI * i / Places));

    /// <summary>The parts of the seam for which held nodes stand.</summary>
    public static IReadOnlyList<SeamInterval> Intervals(ElasticPanel panel)
    {
        if (panel.Held.Count == 0)
        {
            return [];
        }

        // Nodes lie on both sides of every fourth place; without mirrors those of pi/4 and 5 pi/4 alone reach all the way round.
        int around = (int)Math.Round(2 * Math.PI / panel.Spacing);
        int zero = (int)Math.Round(Math.PI / 4 / panel.Spacing * 2);
        bool mirror = panel.Map.Space.IsMirrorSymmetric;
        bool[] held = new bool[2 * around];
        for (int centre = 0; centre < 2 * around; centre += mirror ? around / 2 : around)
        {
            foreach (int node in panel.Held)
            {
                for (int half = 0; half < 2; half++)
                {
                    held[(zero + centre + (2 * node) + half) % held.Length] = true;
                    held[((zero + centre - (2 * node) - half - 1) + held.Length) % held.Length] = true;
                }
            }
        }

        return Runs(held, panel.Spacing / 2);
    }

    /// <summary>Share of the seam's length, per cent.</summary>
    public static double SharePercent(IReadOnlyList<SeamInterval> where, PanelDomain domain)
    {
        double held = 0;
        double whole = 0;
        for (int i = 0; i < Places; i++)
        {
            double s = 2 * Math.PI * (i + 0.5) / Places;
            double speed = domain.EdgeAt(s).Speed;
            whole += speed;
            held += where.Any(part => (s >= part.FromS && s < part.ToS) || s + (2 * Math.PI) < part.ToS) ? speed : 0;
        }

        return 100 * held / whole;
    }

    private static List<SeamInterval> Runs(bool[] held, double step)
    {
        int n = held.Length;
        if (held.All(cell => cell))
        {
            return [new SeamInterval { FromS = 0, ToS = 2 * Math.PI }];
        }

        List<SeamInterval> runs = [];
        for (int i = 0; i < n; i++)
        {
            if (held[i] && !held[(i + n - 1) % n])
            {
                int end = i;
                while (held[end % n])
                {
                    end++;
                }

                runs.Add(new SeamInterval { FromS = i * step, ToS = end * step });
            }
        }

        return runs;
    }
}
