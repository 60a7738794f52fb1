using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;

namespace FeltNest.Panel.Flatten;

/// <summary>A way to make a piece of sphere flat.</summary>
internal interface IFlattening
{
    /// <summary>The flat map of a piece of the unit sphere, with what was solved for it.</summary>
    public (FlatMap Map, PanelSolve Solve) Flatten(PanelDomain domain);
}
