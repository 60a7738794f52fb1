namespace FeltNest.Layout.Polish;

/// <summary>Finds all places where two parts come near each other: corners of each against edges and outward corners of the other, by exact
/// distance. A corner inside the other part counts once, against the edge nearest to it, however deep it lies.</summary>
internal static class ContactFinder
{
    // A corner this far on the wrong side of an edge, in mm, is on the edge within rounding.
    private const double Rounding = 1e-12;

    /// <summary>Adds the contacts of two parts, the second's origin standing at (<paramref name="offsetX"/>, <paramref name="offsetY"/>)
    /// from the first's.</summary>
    /// <param name="first">First part.</param>
    /// <param name="second">Second part.</param>
    /// <param name="offsetX">mm.</param>
    /// <param name="offsetY">mm.</param>
    /// <param name="margin">Greatest distance that counts, mm.</param>
    /// <param name="contacts">List to add to.</param>
    internal static void Find(
        PosedOutline first, PosedOutline second, double offsetX, double offsetY, double margin, List<Contact> contacts)
    {
        if (offsetX + second.MinX > first.MaxX + margin || offsetX + second.MaxX < first.MinX - margin
            || offsetY + second.MinY > first.MaxY + margin || offsetY + second.MaxY < first.MinY - margin)
        {
            return;
        }

        Corners(first, second, offsetX, offsetY, margin, cornersAreFirst: true, contacts);
        Corners(second, first, -offsetX, -offsetY, margin, cornersAreFirst: false, contacts);
    }

    // Corners of `a` against the boundary of `b`, whose origin stands at the offset from a's.
    private static void Corners(
        PosedOutline a, PosedOutline b, double offsetX, double offsetY, double margin, bool cornersAreFirst, List<Contact> contacts)
    {
        for (int i = 0; i < a.X.Length; i++)
        {
            double x = a.X[i] - offsetX;
            double y = a.Y[i] - offsetY;
            if (x < b.MinX - margin || x > b.MaxX + margin || y < b.MinY - margin || y > b.MaxY + margin)
            {
                continue;
            }

            int start = contacts.Count;
            Corner corner = new() { X = a.X[i], Y = a.Y[i], IsFirst = cornersAreFirst };
            (bool inside, int nearest, double depth) = AgainstAll(b, x, y, margin, margin, corner, contacts);
            if (inside && depth > margin)
            {
                // Deeper than the edges looked at: all are asked.
                contacts.RemoveRange(start, contacts.Count - start);
                (inside, nearest, depth) = AgainstAll(b, x, y, margin, double.PositiveInfinity, corner, contacts);
            }

            if (inside && nearest >= 0 && depth > Rounding)
            {
                contacts.RemoveRange(start, contacts.Count - start);
                double along = ((x - b.X[nearest]) * b.AlongX[nearest]) + ((y - b.Y[nearest]) * b.AlongY[nearest]);
                contacts.Add(corner.On(
                    -depth, b.AlongY[nearest], -b.AlongX[nearest], b.X[nearest] + (along * b.AlongX[nearest]),
                    b.Y[nearest] + (along * b.AlongY[nearest])));
            }
        }
    }

    // The contacts of one corner with the edges near it, whether it lies inside the part, and the nearest edge it lies behind. Edges
    // farther along x than the reach are asked only whether a ray passes them.
    private static (bool Inside, int Nearest, double Depth) AgainstAll(
        PosedOutline b, double x, double y, double margin, double reach, Corner corner, List<Contact> contacts)
    {
        int nearest = -1;
        double depth = double.PositiveInfinity;
        bool inside = false;
        (int firstSlice, int lastSlice) = b.Slices(y - margin, y + margin);
        for (int slice = firstSlice; slice <= lastSlice; slice++)
        {
            foreach (int k in b.EdgesIn(slice))
            {
                // An edge stands in every slice it passes; the first of these that is looked at speaks for it.
                if (slice > firstSlice && b.FirstSlice[k] < slice)
                {
                    continue;
                }

                if (x > b.EdgeMaxX[k] + reach)
                {
                    continue;
                }

                if (x < b.EdgeMinX[k] - reach)
                {
                    inside ^= b.Y[k] > y != b.Y[k + 1 == b.Y.Length ? 0 : k + 1] > y;
                    continue;
                }

                inside ^= IsPassed(b, k, x, y);
                double behind = AgainstEdge(b, k, x, y, margin, corner, contacts);
                if (behind < depth)
                {
                    (nearest, depth) = (k, behind);
                }
            }
        }

        return (inside, nearest, depth);
    }

    // Whether a ray along x from the corner passes the edge.
    private static bool IsPassed(PosedOutline b, int k, double x, double y)
    {
        int next = k + 1 == b.X.Length ? 0 : k + 1;
        return b.Y[k] > y != b.Y[next] > y && x < b.X[k] + ((y - b.Y[k]) / (b.Y[next] - b.Y[k]) * (b.X[next] - b.X[k]));
    }

    // Adds the contact with one edge or the corner it begins at; how far the corner lies behind the edge, infinite where it does not.
    private static double AgainstEdge(
        PosedOutline b, int k, double x, double y, double margin, Corner corner, List<Contact> contacts)
    {
        double dx = x - b.X[k];
        double dy = y - b.Y[k];
        double along = (dx * b.AlongX[k]) + (dy * b.AlongY[k]);
        if (along >= 0 && along <= b.Length[k])
        {
            double off = (dx * b.AlongY[k]) - (dy * b.AlongX[k]);
            if (off <= margin && off >= -Rounding)
            {
                contacts.Add(corner.On(
                    off, b.AlongY[k], -b.AlongX[k], b.X[k] + (along * b.AlongX[k]), b.Y[k] + (along * b.AlongY[k])));
            }

            return off <= 0 ? -off : double.PositiveInfinity;
        }

        if (along < 0 && b.IsOutwardCorner[k] && (dx * b.BeforeX[k]) + (dy * b.BeforeY[k]) > 0)
        {
            double off = Math.Sqrt((dx * dx) + (dy * dy));
            if (off <= margin && off > Rounding)
            {
                contacts.Add(corner.On(off, dx / off, dy / off, b.X[k], b.Y[k]));
            }
        }

        return double.PositiveInfinity;
    }

    // A corner in its own part's frame.
    private readonly record struct Corner
    {
        public required double X { get; init; }

        public required double Y { get; init; }

        public required bool IsFirst { get; init; }

        public Contact On(double off, double normalX, double normalY, double onX, double onY) => IsFirst
            ? new Contact
            {
                Distance = off,
                NormalX = normalX,
                NormalY = normalY,
                FirstX = X,
                FirstY = Y,
                SecondX = onX,
                SecondY = onY,
            }
            : new Contact
            {
                Distance = off,
                NormalX = -normalX,
                NormalY = -normalY,
                FirstX = onX,
                FirstY = onY,
                SecondX = X,
                SecondY = Y,
            };
    }
}
