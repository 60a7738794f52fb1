namespace FeltNest.Geometry.NoFit.Curves;

/// <summary>What closed curves wind round: its boundary, and the slits and points inside it at which no meeting has an inside.</summary>
/// <param name="Rings">Boundary with the region on the left: shells counter-clockwise, holes clockwise, each simple.</param>
/// <param name="Slits">Segments of no meeting with the region on both sides.</param>
/// <param name="Points">Places in the region that may be single points of no meeting; to be asked one by one.</param>
internal sealed record CurveRegion(IReadOnlyList<Point2[]> Rings, IReadOnlyList<NoFitSlit> Slits, IReadOnlyList<Point2> Points)
{
    /// <summary>The region of some closed curves.</summary>
    internal static CurveRegion Of(IReadOnlyList<CurvePiece> curves, double touch)
    {
        CurveArrangement arrangement = new(curves, touch);
        CurveFaces faces = new(arrangement);
        List<NoFitSlit> slits = [];
        List<Point2> points = [];
        List<Point2[]> rings = [];
        foreach (Point2[] ring in RegionRings.Of(arrangement, faces))
        {
            // Narrower than touching: the two sides touch within rounding.
            if (Math.Abs(SignedArea(ring)) > touch * Length(ring) / 2)
            {
                rings.Add(ring);
            }
            else
            {
                Point2 far = ring.MaxBy(p => (p - ring[0]).Length);
                Point2 near = ring.MaxBy(p => (p - far).Length);
                if ((far - near).Length > 4 * touch)
                {
                    slits.Add(new NoFitSlit { From = near, To = far });
                }
                else
                {
                    points.Add(far);
                }
            }
        }

        slits.AddRange(SlitsIn(arrangement, faces, touch));
        points.AddRange(
            Enumerable.Range(0, arrangement.Places.Count)
                .Where(v => MayBeAllowed(arrangement, faces, v))
                .Select(v => arrangement.Places[v]));
        return new CurveRegion(rings, slits, points);
    }

    /// <summary>The union of two regions. Single points stay to be asked.</summary>
    internal static CurveRegion Union(CurveRegion a, CurveRegion b, double touch)
    {
        CurveRegion both = Of([.. a.Curves(), .. b.Curves()], touch);
        return both with { Points = [.. both.Points, .. a.Points, .. b.Points] };
    }

    /// <summary>Area of a ring, positive when counter-clockwise.</summary>
    internal static double SignedArea(Point2[] ring)
    {
        double twice = 0;
        for (int i = 0; i < ring.Length; i++)
        {
            twice += (ring[i] - ring[0]).Cross(ring[(i + 1) % ring.Length] - ring[0]);
        }

        return twice / 2;
    }

    // Its boundary as closed curves again; a slit is run along both ways.
    private IEnumerable<CurvePiece> Curves() =>
        Rings.SelectMany(ring => ring.Select((p, i) => new CurvePiece { From = p, To = ring[(i + 1) % ring.Length] }))
            .Concat(
                Slits.SelectMany(s => new[] { new CurvePiece { From = s.From, To = s.To }, new CurvePiece { From = s.To, To = s.From } }));

    private static double Length(Point2[] ring) => ring.Select((p, i) => (ring[(i + 1) % ring.Length] - p).Length).Sum();

    private static List<NoFitSlit> SlitsIn(CurveArrangement arrangement, CurveFaces faces, double touch)
    {
        List<NoFitSlit> slits = [];
        for (int e = 0; e < arrangement.Edges.Length; e++)
        {
            if (faces.Left(2 * e) > 0 && faces.Left((2 * e) + 1) > 0 && arrangement.Edges[e].Meetings(faces.Left(2 * e)) <= 0)
            {
                NoFitSlit slit = new()
                {
                    From = arrangement.Places[arrangement.Edges[e].A],
                    To = arrangement.Places[arrangement.Edges[e].B],
                };
                while (slits.FindIndex(s => Joined(s, slit, touch) is not null) is >= 0 and int known)
                {
                    slit = Joined(slits[known], slit, touch)!.Value;
                    slits.RemoveAt(known);
                }

                slits.Add(slit);
            }
        }

        return slits;
    }

    // Two slits end to end on one line as one.
    private static NoFitSlit? Joined(NoFitSlit a, NoFitSlit b, double touch)
    {
        foreach ((Point2 far, Point2 middle) in new[] { (a.From, a.To), (a.To, a.From) })
        {
            Point2? end;
            if (b.From == middle)
            {
                end = b.To;
            }
            else if (b.To == middle)
            {
                end = b.From;
            }
            else
            {
                end = null;
            }

            if (end is { } other
                && (other - far).Dot(middle - far) > 0
                && Math.Abs((other - far).Cross(middle - far)) <= touch * (other - far).Length
                && (other - middle).Dot(middle - far) > 0)
            {
                return new NoFitSlit { From = far, To = other };
            }
        }

        return null;
    }

    // A place with the region all round at which as many meetings begin as there are at most about it. Every curve through it has two
    // pieces there.
    private static bool MayBeAllowed(CurveArrangement arrangement, CurveFaces faces, int place)
    {
        int most = 0;
        int beginning = 0;
        foreach (int h in faces.Spokes(place))
        {
            CurveEdge edge = arrangement.Edges[h >> 1];
            int left = faces.Left(h);
            int onEdge = edge.Meetings(faces.Left(h & ~1));
            if (left <= 0 || onEdge <= 0)
            {
                return false;
            }

            most = Math.Max(most, left);
            beginning += edge.Forward + edge.Backward;
        }

        return most > 0 && most <= (beginning + 1) / 2;
    }
}
