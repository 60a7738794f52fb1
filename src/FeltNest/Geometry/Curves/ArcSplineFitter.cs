namespace FeltNest.Geometry.Curves;

/// <summary>Replaces a piece of a curve by as few tangent arcs as joints on a fine row of its own places allow.</summary>
/// <remarks>A shortest way through the places, as R. L. S. Drysdale, G. Rote, A. Sturm, "Approximation of an open polygonal curve with a
/// minimum number of circular arcs and biarcs",
/// <i>Computational Geometry</i> 41, 2008 (from memory); differs in that the directions at the joints are free and carried along with each
/// place, which makes arcs nearly half as long again as biarcs that keep the curve's own directions. The tolerance is then lowered as long
/// as just as many arcs suffice, which evens out their errors.</remarks>
internal static class ArcSplineFitter
{
    // Places tried as joints, and looks between two of them.
    private const int MostPlaces = 200;
    private const int Looks = 3;

    // Halvings of the tolerance while the count of arcs stays.
    private const int Evenings = 5;

    // Directions told apart at a joint, as a share of the angle by which the tolerance lets a usual arc lean.
    private const double LeanShare = 0.2;

    // Looks at a closing pair that are tried before all of them stand so many apart.
    private const int Apart = 24;

    // Arcs that miss after so many places in a row do not come back.
    private const int MostMisses = 3;

    /// <summary>Fits a piece.</summary>
    /// <param name="curve">The piece, parameter 0 to <paramref name="span"/> in mm along it.</param>
    /// <param name="span">Its length, mm.</param>
    /// <param name="joints">Parameters at which the piece may change its law: they are tried as joints too.</param>
    /// <param name="tolerance">Greatest distance allowed, mm.</param>
    /// <param name="endsHeld">True where the directions at both ends must be the curve's own; false where they may lean as the tolerance
    /// allows.</param>
    /// <param name="stop">Breaks the fit off.</param>
    /// <returns>Vertices of the arcs, without the end of the last; null where no arcs stay within the tolerance.</returns>
    public static IReadOnlyList<ArcVertex>? Fit(
        IPlaneCurve curve, double span, IEnumerable<double> joints, double tolerance, bool endsHeld, CancellationToken stop = default)
    {
        Row row = new(curve, span, joints, endsHeld, stop);
        List<ArcVertex>? best = row.Fewest(tolerance, int.MaxValue);
        double low = 0;
        double high = tolerance;
        for (int i = 0; best is not null && i < Evenings; i++)
        {
            double middle = (low + high) / 2;
            List<ArcVertex>? tried = row.Fewest(middle, best.Count);
            (low, high, best) = tried is null ? (middle, high, best) : (low, middle, tried);
        }

        return best;
    }

    // A way to a place: the direction it arrives in and where it came from.
    private readonly record struct Way
    {
        public required double Direction { get; init; }

        public required int From { get; init; }

        public required int FromWay { get; init; }
    }

    private sealed class Row
    {
        private readonly CurvePoint[] places;
        private readonly double[] angles;
        private readonly double[][] chords;
        private readonly (Point2 Place, Point2 Left)[] looks;
        private readonly bool endsHeld;
        private readonly CancellationToken stop;

        public Row(IPlaneCurve curve, double span, IEnumerable<double> joints, bool endsHeld, CancellationToken stop)
        {
            (this.endsHeld, this.stop) = (endsHeld, stop);
            // Joints of a few arcs can be kept just as they are; those of many say nothing.
            double[] own = [.. joints.Where(j => j > 0 && j < span)];
            double[] few = own.Length <= MostPlaces / 4 ? own : [];
            double[] at = [.. Enumerable.Range(0, MostPlaces + 1).Select(i => i == MostPlaces ? span : span * i / MostPlaces)
                .Concat(few).Distinct().Order()];
            places = Array.ConvertAll(at, curve.At);
            angles = Array.ConvertAll(places, p => Angle(p.Derivative));
            chords = [.. places.Select((from, i) => places.Skip(i + 1).Select(to => Angle(to.Place - from.Place)).ToArray())];
            looks = [.. at.Zip(at.Skip(1)).SelectMany(pair => Enumerable.Range(0, Looks).Select(k =>
            {
                CurvePoint look = curve.At(pair.First + ((pair.Second - pair.First) * (k + 0.5) / Looks));
                return (look.Place, look.Derivative.Left * (1 / look.Derivative.Length));
            }))];
        }

        private int End => places.Length - 1;

        public List<ArcVertex>? Fewest(double tolerance, int most)
        {
            (double Low, double High)[][] spans = Spans(tolerance);
            double usual = (places[spans[0].Length].Place - places[0].Place).Length;
            double lean = LeanShare * tolerance / usual;
            List<List<Way>[]> layers = [Start(lean)];
            for (int arcs = 1; arcs <= Math.Min(most, End); arcs++)
            {
                stop.ThrowIfCancellationRequested();

                // With held ends the last two arcs are a pair that closes on the end's direction.
                if (endsHeld && arcs >= 2 && Closed(layers, arcs - 2, tolerance) is { } closed)
                {
                    return closed;
                }

                layers.Add(Next(layers[^1], spans, lean));
                if (!endsHeld && layers[^1][End].Count > 0)
                {
                    return Back(
                        layers, arcs, End, Array.IndexOf([.. layers[^1][End]], layers[^1][End].MinBy(w => Math.Abs(Off(w.Direction, End)))),
                        []);
                }
            }

            return null;
        }

        private List<Way>[] Start(double lean)
        {
            const int leans = 6;
            List<Way>[] first = [.. places.Select(_ => new List<Way>())];
            double own = angles[0];
            first[0].AddRange(
                endsHeld
                    ? [new Way { Direction = own, From = -1, FromWay = -1 }]
                    : Enumerable.Range(-leans, (2 * leans) + 1)
                        .OrderBy(Math.Abs)
                        .Select(k => new Way { Direction = own + (k * lean), From = -1, FromWay = -1 }));
            return first;
        }

        // Half turns an arc from one place to a later one may make within the tolerance.
        private (double Low, double High)[][] Spans(double tolerance)
        {
            (double, double)[][] spans = new (double, double)[places.Length][];
            for (int i = 0; i < places.Length; i++)
            {
                stop.ThrowIfCancellationRequested();
                List<(double, double)> row = [];
                int misses = 0;
                for (int j = i + 1; j < places.Length && misses < MostMisses; j++)
                {
                    // Angles are compared as pairs of cross and dot product: only the two that count are worked out.
                    Point2 low = new(-1, -0.0);
                    Point2 high = new(-1, 0);
                    bool open = true;
                    for (int k = i * Looks; k < j * Looks && open; k++)
                    {
                        (Point2 at, Point2 left) = looks[k];
                        Point2 most = HalfTurn(i, j, at + (left * tolerance));
                        Point2 least = HalfTurn(i, j, at - (left * tolerance));
                        low = Less(low, most) ? most : low;
                        high = Less(least, high) ? least : high;
                        open = !Less(high, low);
                    }

                    misses = open ? 0 : misses + 1;
                    row.Add((Math.Atan2(low.Y, low.X), open ? Math.Atan2(high.Y, high.X) : double.NegativeInfinity));
                }

                spans[i] = [.. row];
            }

            return spans;
        }

        // Of the circles through two places the one through a third point turns by twice the angle of this vector from the first to the
        // second.
        private Point2 HalfTurn(int from, int to, Point2 through)
        {
            Point2 a = through - places[from].Place;
            Point2 b = places[to].Place - through;
            return new Point2(a.Dot(b), a.Cross(b));
        }

        // Whether one vector's angle, from minus half a turn to half a turn, is less than another's.
        private static bool Less(Point2 one, Point2 other) => one.X > 0 && other.X > 0
            ? one.Y * other.X < other.Y * one.X : Math.Atan2(one.Y, one.X) < Math.Atan2(other.Y, other.X);

        private List<Way>[] Next(List<Way>[] layer, (double Low, double High)[][] spans, double lean)
        {
            List<Way>[] next = [.. places.Select(_ => new List<Way>())];
            HashSet<long>[] taken = [.. places.Select(_ => new HashSet<long>())];
            for (int i = 0; i < End; i++)
            {
                for (int w = 0; w < layer[i].Count; w++)
                {
                    for (int n = 0; n < spans[i].Length; n++)
                    {
                        int j = i + 1 + n;
                        double half = Turned(chords[i][n] - layer[i][w].Direction);
                        if (half < spans[i][n].Low || half > spans[i][n].High)
                        {
                            continue;
                        }

                        double direction = chords[i][n] + half;
                        if (taken[j].Add((long)Math.Round(Off(direction, j) / lean)))
                        {
                            next[j].Add(new Way { Direction = direction, From = i, FromWay = w });
                        }
                    }
                }
            }

            return next;
        }

        private List<ArcVertex>? Closed(List<List<Way>[]> layers, int arcs, double tolerance)
        {
            (double Worst, int At, int Way, Biarc Pair) best = (double.PositiveInfinity, 0, 0, default);
            for (int i = 0; i < End; i++)
            {
                for (int w = 0; w < layers[arcs][i].Count; w++)
                {
                    (double sin, double cos) = Math.SinCos(layers[arcs][i][w].Direction);
                    Biarc pair = Biarc.Between(new CurvePoint(places[i].Place, new Point2(cos, sin)), places[End]);
                    double worst = 0;

                    // Looks far apart come first: most pairs miss widely.
                    for (int k = (i * Looks) + (Apart / 2); k < looks.Length && worst <= tolerance; k += Apart)
                    {
                        worst = Math.Max(worst, pair.DistanceTo(looks[k].Place));
                    }

                    for (int k = i * Looks; k < looks.Length && worst <= tolerance; k++)
                    {
                        worst = Math.Max(worst, pair.DistanceTo(looks[k].Place));
                    }

                    best = worst <= tolerance && worst < best.Worst ? (worst, i, w, pair) : best;
                }
            }

            return double.IsInfinity(best.Worst) ? null : Back(layers, arcs, best.At, best.Way, [best.Pair.First, best.Pair.Second]);
        }

        private List<ArcVertex> Back(List<List<Way>[]> layers, int arcs, int at, int way, List<ArcVertex> tail)
        {
            for (int k = arcs; k > 0; k--)
            {
                Way arrived = layers[k][at][way];
                (Point2 from, Point2 to) = (places[arrived.From].Place, places[at].Place);
                double turn = 2 * Math.IEEERemainder(arrived.Direction - Angle(to - from), 2 * Math.PI);
                tail.Insert(0, new ArcVertex(from.X, from.Y, Biarc.IsStraight(turn, (to - from).Length) ? 0 : turn));
                (at, way) = (arrived.From, arrived.FromWay);
            }

            return tail;
        }

        private double Off(double direction, int place) => Turned(direction - angles[place]);

        // The angle within half a turn to either side; most are there already.
        private static double Turned(double angle) => Math.Abs(angle) <= Math.PI ? angle : Math.IEEERemainder(angle, 2 * Math.PI);

        private static double Angle(Point2 way) => Math.Atan2(way.Y, way.X);
    }
}
