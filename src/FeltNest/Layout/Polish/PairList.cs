namespace FeltNest.Layout.Polish;

/// <summary>Lists every pair of panels, copies included, that can come within reach; pairs that move as one are listed once.</summary>
internal static class PairList
{
    /// <summary>Pairs of a model whose origins may come nearer than <paramref name="reach"/> mm.</summary>
    internal static List<PanelPair> Of(PoseModel model, double[] at, double reach)
    {
        List<PanelPair> pairs = [];
        HashSet<PanelPair> known = new(new SameMotion(model));
        foreach ((int first, int second) in
                 from i in Enumerable.Range(0, model.Panels.Count) from k in Enumerable.Range(i, model.Panels.Count - i) select (i, k))
        {
            foreach (int[] copy in Copies(model, at, first, second, reach))
            {
                if (first == second && IsNotForward(copy))
                {
                    continue;
                }

                AffineForm x = Offset(model, first, second, copy, p => p.X, p => p.X);
                AffineForm y = Offset(model, first, second, copy, p => p.Y, p => p.Y);
                PanelPair pair = new() { First = first, Second = second, OffsetX = x, OffsetY = y };
                if (known.Add(pair))
                {
                    pairs.Add(pair);
                }
            }
        }

        return pairs;
    }

    private static bool IsNotForward(int[] copy) => copy.Length == 1 ? copy[0] <= 0 : copy[1] < 0 || (copy[1] == 0 && copy[0] <= 0);

    private static IEnumerable<int[]> Copies(PoseModel model, double[] at, int first, int second, double reach)
    {
        double x = model.Panels[second].X.At(at) - model.Panels[first].X.At(at);
        double y = model.Panels[second].Y.At(at) - model.Panels[first].Y.At(at);
        double pitch = model.Periods[0].X.At(at);
        if (model.Periods.Count == 1)
        {
            if (Math.Abs(y) > reach)
            {
                yield break;
            }

            foreach (int k in Along(x))
            {
                yield return [k];
            }

            yield break;
        }

        double slantX = model.Periods[1].X.At(at);
        double rise = model.Periods[1].Y.At(at);
        for (int m = (int)Math.Ceiling((-reach - y) / rise); m <= (reach - y) / rise; m++)
        {
            foreach (int k in Along(x + (m * slantX)))
            {
                yield return [k, m];
            }
        }

        IEnumerable<int> Along(double from)
        {
            for (int k = (int)Math.Ceiling((-reach - from) / pitch); k <= (reach - from) / pitch; k++)
            {
                yield return k;
            }
        }
    }

    private static AffineForm Offset(
        PoseModel model, int first, int second, int[] copy, Func<PanelPose, AffineForm> part,
        Func<(AffineForm X, AffineForm Y), AffineForm> period)
    {
        Dictionary<int, double> sum = [];
        double constant = part(model.Panels[second]).Constant - part(model.Panels[first]).Constant;
        Add(part(model.Panels[second]), 1);
        Add(part(model.Panels[first]), -1);
        for (int i = 0; i < copy.Length; i++)
        {
            constant += copy[i] * period(model.Periods[i]).Constant;
            Add(period(model.Periods[i]), copy[i]);
        }

        return new AffineForm(constant, [.. sum.Where(t => t.Value != 0).OrderBy(t => t.Key).Select(t => (t.Key, t.Value))]);

        void Add(AffineForm form, double weight)
        {
            foreach ((int parameter, double factor) in form.Terms)
            {
                sum[parameter] = sum.GetValueOrDefault(parameter) + (weight * factor);
            }
        }
    }
}
