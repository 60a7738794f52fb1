using System.Diagnostics.CodeAnalysis;

namespace FeltNest.Layout.Polish;

/// <summary>Pairs of panels of one model are the same when their offset and both angles are the same forms of the parameters: they keep
/// one distance whatever the parameters are.</summary>
internal sealed class SameMotion(PoseModel model) : IEqualityComparer<PanelPair>
{
    /// <inheritdoc/>
    public bool Equals(PanelPair? x, PanelPair? y) =>
        x is not null && y is not null
        && Same(x.OffsetX, y.OffsetX) && Same(x.OffsetY, y.OffsetY)
        && Same(model.Panels[x.First].Angle, model.Panels[y.First].Angle)
        && Same(model.Panels[x.Second].Angle, model.Panels[y.Second].Angle);

    /// <inheritdoc/>
    public int GetHashCode([DisallowNull] PanelPair obj)
    {
        HashCode hash = default;
        Add(ref hash, obj.OffsetX);
        Add(ref hash, obj.OffsetY);
        Add(ref hash, model.Panels[obj.First].Angle);
        Add(ref hash, model.Panels[obj.Second].Angle);
        return hash.ToHashCode();
    }

    private static bool Same(AffineForm a, AffineForm b) => a.Constant == b.Constant && a.Terms.AsSpan().SequenceEqual(b.Terms);

    private static void Add(ref HashCode hash, AffineForm form)
    {
        hash.Add(form.Constant);
        foreach ((int parameter, double factor) in form.Terms)
        {
            hash.Add(parameter);
            hash.Add(factor);
        }
    }
}
