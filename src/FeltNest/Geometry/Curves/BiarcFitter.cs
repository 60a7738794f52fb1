namespace FeltNest.Geometry.Curves;

/// <summary>Turns a smooth closed curve into few tangent arcs within a tolerance.</summary>
/// <remarks>Follows D. S. Meek and D. J. Walton, "Approximation of discrete data by G1 arc splines", <i>Computer-Aided Design</i> 24(6),
/// 1992 (the longest biarc that fits, again and again) with the curve's own places and tangents, as Z. Sir, R. Feichtinger, B. Juttler,
/// "Approximating curves and their offsets using biarcs and Pythagorean hodograph quintics",
/// <i>Computer-Aided Design</i> 38(6), 2006; differs in that the tolerance is then lowered until just as many arcs still suffice, which
/// evens out their errors.</remarks>
internal static class BiarcFitter
{
    // Places looked at along a biarc while its length is sought, and when the fit is measured.
    private const int Looks = 14;
    private const int Measures = 200;

    // Halvings in the search for the longest biarc and for the evened tolerance: a part in 4000 and in 60 is as fine as the count of arcs
    // can notice.
    private const int LengthHalvings = 12;
    private const int EveningHalvings = 6;

    /// <summary>Fits a curve.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="tolerance">Greatest distance allowed between curve and arcs, mm.</param>
    /// <param name="symmetry">What the curve is kept by: the arcs are then kept by it too, to the last digit.</param>
    /// <exception cref="GeometryException">The curve is too rough to be met within the tolerance.</exception>
    public static BiarcFit Fit(IPlaneCurve curve, double tolerance, CurveSymmetry symmetry)
    {
        int alike = symmetry switch { CurveSymmetry.Mirrors => 4, CurveSymmetry.HalfTurn => 2, _ => 1 };
        double span = curve.Period / alike;

        // Each round asks for a tenth less: the short look along a biarc can miss its worst place by a few per cent.
        const int rounds = 20;
        double asked = tolerance;
        for (int round = 0; round < rounds; round++, asked *= 0.9)
        {
            List<Biarc> pieces = Evened(curve, span, asked, symmetry, out double[] joints);
            double deviation = 0;
            for (int i = 0; i < pieces.Count; i++)
            {
                deviation = Math.Max(deviation, Deviation(curve, pieces[i], joints[i], joints[i + 1], Measures));
            }

            if (deviation <= tolerance)
            {
                return new BiarcFit(ArcOutline.From(Whole(pieces, symmetry)), deviation);
            }
        }

        throw new GeometryException(
            FormattableString.Invariant($"outline is too rough for arcs within {tolerance:0.####} mm"), curve.At(0).Place);
    }

    private static List<Biarc> Evened(IPlaneCurve curve, double span, double tolerance, CurveSymmetry symmetry, out double[] joints)
    {
        List<double> best = Joints(curve, span, tolerance, symmetry);
        double low = 0;
        double high = tolerance;
        for (int i = 0; i < EveningHalvings; i++)
        {
            double middle = (low + high) / 2;
            List<double> tried = Joints(curve, span, middle, symmetry, best.Count);
            (low, high, best) = tried.Count <= best.Count && tried[^1] == span ? (low, middle, tried) : (middle, high, best);
        }

        joints = [.. best];
        return [.. best.Zip(best.Skip(1), (a, b) => Biarc.Between(End(curve, a, span, symmetry), End(curve, b, span, symmetry)))];
    }

    // Ends of the longest biarcs, from 0 on; given up after a count.
    private static List<double> Joints(IPlaneCurve curve, double span, double tolerance, CurveSymmetry symmetry, int most = int.MaxValue)
    {
        List<double> joints = [0];
        double guess = span;
        while (joints[^1] < span && joints.Count < most)
        {
            double from = joints[^1];
            double low = 0;
            double high = Math.Min(2 * guess, span - from);
            if (Fits(high))
            {
                guess = high;
                joints.Add(high == span - from ? span : from + high);
                continue;
            }

            for (int i = 0; i < LengthHalvings || low == 0; i++)
            {
                double middle = (low + high) / 2;
                (low, high) = Fits(middle) ? (middle, high) : (low, middle);
                if (high < 1e-6 * span)
                {
                    throw new GeometryException(
                        FormattableString.Invariant($"outline is too rough for arcs within {tolerance:0.####} mm"), curve.At(from).Place);
                }
            }

            guess = low;
            joints.Add(from + low);

            bool Fits(double length) =>
                Deviation(
                    curve, Biarc.Between(End(curve, from, span, symmetry), End(curve, from + length, span, symmetry)), from, from + length,
                    Looks) <= tolerance;
        }

        return joints;
    }

    private static double Deviation(IPlaneCurve curve, Biarc piece, double from, double to, int looks)
    {
        double worst = 0;
        for (int i = 1; i < looks; i++)
        {
            worst = Math.Max(worst, piece.DistanceTo(curve.At(from + ((to - from) * i / looks)).Place));
        }

        return worst;
    }

    // Places on a mirror are put on it exactly, so that the mirrored arcs join without a kink.
    private static CurvePoint End(IPlaneCurve curve, double parameter, double span, CurveSymmetry symmetry)
    {
        CurvePoint end = curve.At(parameter);
        if (symmetry != CurveSymmetry.Mirrors)
        {
            return end;
        }

        if (parameter == 0)
        {
            return new CurvePoint(new(0, end.Place.Y), new(1, 0));
        }

        if (parameter == span)
        {
            return new CurvePoint(new(end.Place.X, 0), new(0, 1));
        }

        return end;
    }

    private static List<ArcVertex> Whole(List<Biarc> pieces, CurveSymmetry symmetry)
    {
        List<ArcVertex> chain = [.. pieces.SelectMany(piece => new[] { piece.First, piece.Second })];
        if (symmetry == CurveSymmetry.Mirrors)
        {
            Point2 tip = pieces[^1].End;
            List<ArcVertex> back = [new(tip.X, tip.Y, chain[^1].Turn)];
            for (int i = chain.Count - 1; i > 0; i--)
            {
                back.Add(new ArcVertex(chain[i].X, -chain[i].Y, chain[i - 1].Turn));
            }

            chain.AddRange(back);
        }

        if (symmetry != CurveSymmetry.None)
        {
            chain.AddRange([.. chain.Select(v => new ArcVertex(-v.X, -v.Y, v.Turn))]);
        }

        return chain;
    }
}
