namespace FeltNest.Seam;

/// <summary>Figures of a smooth closed curve on the unit sphere that has no closed forms for them, summed at equal steps of its
/// parameter.</summary>
internal readonly record struct SeamMeasure
{
    /// <summary>Length of the whole seam.</summary>
    public required double Length { get; init; }

    /// <summary>Greatest width measured along great circles across the long axis, radians.</summary>
    public required double WidthAngle { get; init; }

    /// <summary>Greatest amount of geodesic curvature.</summary>
    public required double GreatestCurvature { get; init; }

    // Steps round the curve: sums of smooth periodic functions are then exact to the last digits, and extremes are bracketed to half a
    // degree.
    private const int Steps = 720;

    /// <summary>Measures.</summary>
    public static SeamMeasure Of(Func<double, SeamJet> at)
    {
        const double step = 2 * Math.PI / Steps;
        SeamJet[] places = [.. Enumerable.Range(0, Steps).Select(i => at(i * step))];
        return new SeamMeasure
        {
            Length = places.Sum(place => place.Speed) * step,
            WidthAngle = 2 * Math.Asin(Greatest(place => Math.Abs(place.Point.Y))),
            GreatestCurvature = Greatest(place => Math.Abs(place.GeodesicCurvature)),
        };

        // The best place, then golden sections of the steps on both sides of it.
        double Greatest(Func<SeamJet, double> quantity)
        {
            int best = 0;
            for (int i = 1; i < Steps; i++)
            {
                best = quantity(places[i]) > quantity(places[best]) ? i : best;
            }

            // Sections: each keeps 0.618 of the span, so that an extreme, flat as it is, has its last digits.
            const int sections = 30;
            double low = (best - 1) * step;
            double high = (best + 1) * step;
            double part = (3 - Math.Sqrt(5)) / 2;
            for (int i = 0; i < sections; i++)
            {
                double a = low + (part * (high - low));
                double b = high - (part * (high - low));
                (low, high) = quantity(at(a)) < quantity(at(b)) ? (a, high) : (low, b);
            }

            return Math.Max(quantity(places[best]), quantity(at((low + high) / 2)));
        }
    }
}
