using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Panel;
using FeltNest.Seam;

namespace FeltNest.Drawing.Strain;

/// <summary>The part of a panel on the ball that faces the viewer, cut off along the rim of the ball.</summary>
internal sealed class FacingMesh
{
    // A node of the panel alone (share 0), or a place on the rim between two.
    private readonly List<(StrainSample From, StrainSample To, double Share)> nodes = [];
    private readonly List<Point2> places = [];
    private readonly List<(int A, int B, int C)> triangles = [];

    /// <summary>The part of a mesh.</summary>
    /// <param name="mesh">The panel.</param>
    /// <param name="inView">A point of the unit sphere as seen: to the right, up, to the viewer.</param>
    public FacingMesh(StrainMesh mesh, Func<SpherePoint, (double Right, double Up, double Depth)> inView)
    {
        (double Right, double Up, double Depth)[] seen = [.. mesh.Nodes.Select(node => inView(node.Fitted))];
        Dictionary<(int, int), int> kept = [];
        foreach ((int a, int b, int c) in mesh.Triangles)
        {
            int[] corners = [.. Cut(a, b), .. Cut(b, c), .. Cut(c, a)];
            for (int i = 1; i + 1 < corners.Length; i++)
            {
                triangles.Add((corners[0], corners[i], corners[i + 1]));
            }
        }

        // The start of a side where it faces the viewer, and the place on the rim where the side passes it.
        IEnumerable<int> Cut(int from, int to)
        {
            if (seen[from].Depth >= 0)
            {
                yield return Node((from, from), () => new Point2(seen[from].Right, seen[from].Up), 0);
            }

            if (seen[from].Depth >= 0 != seen[to].Depth >= 0)
            {
                (int i, int j) = (Math.Min(from, to), Math.Max(from, to));
                yield return Node((i, j), () => BallSide.OnRim(seen[i], seen[j]), seen[i].Depth / (seen[i].Depth - seen[j].Depth));
            }
        }

        int Node((int I, int J) key, Func<Point2> place, double share)
        {
            if (!kept.TryGetValue(key, out int node))
            {
                kept.Add(key, node = places.Count);
                places.Add(place());
                nodes.Add((mesh.Nodes[key.I], mesh.Nodes[key.J], share));
            }

            return node;
        }
    }

    /// <summary>Places of the nodes, the ball having radius 1.</summary>
    public IReadOnlyList<Point2> Places => places;

    /// <summary>Triangles by their nodes, counter-clockwise.</summary>
    public IReadOnlyList<(int A, int B, int C)> Triangles => triangles;

    /// <summary>A quantity of the strain at the nodes.</summary>
    public double[] Values(Func<StrainSample, double> pick) =>
        [.. nodes.Select(n => pick(n.From) + (n.Share == 0 ? 0 : n.Share * (pick(n.To) - pick(n.From))))];
}
