using FeltNest.Panel;

namespace FeltNest.Drawing.Strain;

/// <summary>The samples of a strain field as nodes and triangles; the pole is one node, however many samples ring 0 has.</summary>
internal sealed class StrainMesh
{
    private readonly int spokes;

    /// <summary>The mesh of a field.</summary>
    public StrainMesh(StrainField field)
        : this(field, 1)
    {
    }

    private StrainMesh(StrainField field, int every)
    {
        spokes = field.Spokes / every;
        int rings = ((field.Rings - 1) / every) + 1;
        Nodes =
        [
            field.At(0, 0),
            .. from ring in Enumerable.Range(1, rings - 1)
               from spoke in Enumerable.Range(0, spokes)
               select field.At(ring * every, spoke * every),
        ];
        List<(int, int, int)> triangles = [];
        for (int ring = 0; ring < rings - 1; ring++)
        {
            for (int spoke = 0; spoke < spokes; spoke++)
            {
                int inner = Node(ring, spoke);
                int far = Node(ring + 1, spoke + 1);
                triangles.Add((inner, Node(ring + 1, spoke), far));
                if (ring > 0)
                {
                    triangles.Add((inner, far, Node(ring, spoke + 1)));
                }
            }
        }

        Triangles = triangles;
        Edge = [.. Enumerable.Range(0, spokes).Select(spoke => Node(rings - 1, spoke))];
    }

    /// <summary>The mesh for small pictures: every second ring and spoke, where that leaves the edge in.</summary>
    public static StrainMesh Coarse(StrainField field) =>
        new(field, (field.Rings - 1) % 2 == 0 && field.Spokes % 2 == 0 ? 2 : 1);

    /// <summary>The samples.</summary>
    public IReadOnlyList<StrainSample> Nodes { get; }

    /// <summary>Triangles by their nodes, counter-clockwise on the flat panel and seen from outside the ball.</summary>
    public IReadOnlyList<(int A, int B, int C)> Triangles { get; }

    /// <summary>Nodes of the edge, in the order of the seam parameter.</summary>
    public IReadOnlyList<int> Edge { get; }

    private int Node(int ring, int spoke) => ring == 0 ? 0 : 1 + ((ring - 1) * spokes) + (spoke % spokes);
}
