using FeltNest.Geometry;
using FeltNest.Layout.Polish;

namespace FeltNest.Design.SeamDesign;

/// <summary>What contacts and selvedges ask of one step of lay and seam together, as rows of a linear program.</summary>
/// <remarks>A contact's distance changes with the lay as in the polish of any layout, and with the seam as the outline moves at its two
/// places along the normal between them: the derivative of a distance by the shapes at its feet.</remarks>
internal static class SeamRows
{
    /// <summary>Rows of all near contacts and of the selvedges.</summary>
    /// <param name="model">The lay of the present panel.</param>
    /// <param name="outline">Its outline.</param>
    /// <param name="moves">How the outline moves with each number of the seam.</param>
    /// <param name="reach">How much nearer than the gap two places may come within a step, mm.</param>
    public static IEnumerable<(double[] Factors, double Bound)> Of(
        PoseModel model, Point2[] outline, IReadOnlyList<Point2[]> moves, double reach)
    {
        double radius = outline.Max(p => p.Length);
        Dictionary<double, PosedOutline> posed = [];
        IEnumerable<(double[] Factors, double Bound)> contacts = PairList.Of(model, model.Parameters, (2 * radius) + model.Gap + reach)
            .SelectMany(pair => Contacts(model, pair, posed, outline, moves, reach));
        return contacts.Concat(model.Panels.SelectMany(panel => Selvedges(model, panel, outline, moves, reach)));
    }

    private static IEnumerable<(double[] Factors, double Bound)> Contacts(
        PoseModel model, PanelPair pair, Dictionary<double, PosedOutline> posed, Point2[] outline, IReadOnlyList<Point2[]> moves,
        double reach)
    {
        double[] at = model.Parameters;
        double first = model.Panels[pair.First].Angle.At(at);
        double second = model.Panels[pair.Second].Angle.At(at);
        List<Contact> contacts = [];
        ContactFinder.Find(
            Posed(first), Posed(second), pair.OffsetX.At(at), pair.OffsetY.At(at), model.Gap + reach, contacts);
        foreach (Contact c in contacts)
        {
            double[] factors = new double[at.Length + moves.Count];
            ContactLimit.Factors(model, pair, c, factors);
            int here = Nearest(outline, new Point2(c.FirstX, c.FirstY).Turned(-first));
            int there = Nearest(outline, new Point2(c.SecondX, c.SecondY).Turned(-second));
            for (int k = 0; k < moves.Count; k++)
            {
                Point2 apart = moves[k][here].Turned(first) - moves[k][there].Turned(second);
                factors[at.Length + k] = apart.Dot(new Point2(c.NormalX, c.NormalY));
            }

            yield return (factors, model.Gap - c.Distance);
        }

        PosedOutline Posed(double angle)
        {
            if (!posed.TryGetValue(angle, out PosedOutline? found))
            {
                posed[angle] = found = new PosedOutline(model.Part, angle);
            }

            return found;
        }
    }

    private static IEnumerable<(double[] Factors, double Bound)> Selvedges(
        PoseModel model, PanelPose panel, Point2[] outline, IReadOnlyList<Point2[]> moves, double reach)
    {
        if (model.Limits(panel) is not (var lower, var upper))
        {
            yield break;
        }

        double[] at = model.Parameters;
        double angle = panel.Angle.At(at);
        double y = panel.Y.At(at);
        for (int i = 0; i < outline.Length; i++)
        {
            Point2 place = outline[i].Turned(angle);
            foreach ((double room, double side) in new[] { (upper - y - place.Y, -1.0), (y + place.Y - lower, 1.0) })
            {
                if (room < reach)
                {
                    double[] factors = new double[at.Length + moves.Count];
                    panel.Y.AddTo(factors, side);
                    panel.Angle.AddTo(factors, side * place.X);
                    for (int k = 0; k < moves.Count; k++)
                    {
                        factors[at.Length + k] = side * moves[k][i].Turned(angle).Y;
                    }

                    yield return (factors, -room);
                }
            }
        }
    }

    private static int Nearest(Point2[] outline, Point2 place)
    {
        int best = 0;
        double least = double.PositiveInfinity;
        for (int i = 0; i < outline.Length; i++)
        {
            Point2 off = outline[i] - place;
            double far = off.Dot(off);
            (best, least) = far < least ? (i, far) : (best, least);
        }

        return best;
    }
}
