namespace FeltNest.Layout.Polish;

/// <summary>Finds all places where two parts come near each other: corners of each against edges and outward corners of the other, by exact distance.</summary>
internal static class ContactFinder
{
    /// <summary>Adds the contacts of two parts, the second's origin standing at (<paramref name="offsetX"/>, <paramref name="offsetY"/>) from the first's.</summary>
    /// <param name="first">First part.</param>
    /// <param name="second">Second part.</param>
    /// <param name="offsetX">mm.</param>
    /// <param name="offsetY">mm.</param>
    /// <param name="margin">Greatest distance that counts, mm.</param>
    /// <param name="depth">Greatest depth of a corner inside the other part that is taken for a contact, mm.</param>
    /// <param name="contacts">List to add to.</param>
    internal static void Find(PosedOutline first, PosedOutline second, double offsetX, double offsetY, double margin, double depth, List<Contact> contacts)
    {
        if (offsetX + second.MinX > first.MaxX + margin || offsetX + second.MaxX < first.MinX - margin
            || offsetY + second.MinY > first.MaxY + margin || offsetY + second.MaxY < first.MinY - margin)
        {
            return;
        }

        Corners(first, second, offsetX, offsetY, margin, depth, cornersAreFirst: true, contacts);
        Corners(second, first, -offsetX, -offsetY, margin, depth, cornersAreFirst: false, contacts);
    }

    // Corners of `a` against the boundary of `b`, whose origin stands at the offset from a's.
    private static void Corners(
        PosedOutline a, PosedOutline b, double offsetX, double offsetY, double margin, double depth, bool cornersAreFirst, List<Contact> contacts)
    {
        int n = b.X.Length;
        for (int i = 0; i < a.X.Length; i++)
        {
            double x = a.X[i] - offsetX, y = a.Y[i] - offsetY;
            if (x < b.MinX - margin || x > b.MaxX + margin || y < b.MinY - margin || y > b.MaxY + margin)
            {
                continue;
            }

            double before = ((x - b.X[n - 1]) * b.AlongX[n - 1]) + ((y - b.Y[n - 1]) * b.AlongY[n - 1]) - b.Length[n - 1];
            for (int k = 0; k < n; k++)
            {
                double dx = x - b.X[k], dy = y - b.Y[k];
                double along = (dx * b.AlongX[k]) + (dy * b.AlongY[k]);
                if (along >= 0 && along <= b.Length[k])
                {
                    double off = (dx * b.AlongY[k]) - (dy * b.AlongX[k]);
                    if (off <= margin && off >= -depth)
                    {
                        Add(off, b.AlongY[k], -b.AlongX[k], b.X[k] + (along * b.AlongX[k]), b.Y[k] + (along * b.AlongY[k]));
                    }
                }
                else if (along < 0 && before > 0 && b.IsOutwardCorner[k])
                {
                    double off = Math.Sqrt((dx * dx) + (dy * dy));
                    if (off <= margin && off > 0)
                    {
                        Add(off, dx / off, dy / off, b.X[k], b.Y[k]);
                    }
                }

                before = along - b.Length[k];
            }

            void Add(double off, double normalX, double normalY, double onX, double onY) => contacts.Add(cornersAreFirst
                ? new Contact(off, normalX, normalY, a.X[i], a.Y[i], onX, onY)
                : new Contact(off, -normalX, -normalY, onX, onY, a.X[i], a.Y[i]));
        }
    }
}
