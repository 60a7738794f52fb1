namespace FeltNest.Seam;

/// <summary>A place on the seam with the first two derivatives by the seam parameter.</summary>
/// <param name="Point">Place on the unit sphere.</param>
/// <param name="First">First derivative.</param>
/// <param name="Second">Second derivative.</param>
internal readonly record struct SeamJet(SpherePoint Point, SpherePoint First, SpherePoint Second)
{
    /// <summary>Length of seam for a unit of parameter.</summary>
    public double Speed => First.Length;

    /// <summary>Geodesic curvature on the unit sphere, positive where the seam bends towards the panel that holds the pole.</summary>
    public double GeodesicCurvature
    {
        get
        {
            double speed = Speed;
            return Point.Dot(First.Cross(Second)) / (speed * speed * speed);
        }
    }
}
