using FeltNest.Geometry;
using FeltNest.Geometry.Curves;
using FeltNest.Numerics;

namespace FeltNest.Panel.Wrap.Edge;

/// <summary>Least squares of waves round a closed edge: places, their parameters and, with mirrors, the axis are found in turns.</summary>
/// <remarks>The parameter of each place is moved to the foot of its distance after each solve, so that distances along the normal alone
/// count.</remarks>
internal sealed class WaveFit
{
    // Turns of solve and feet: each takes a digit off what the feet still move.
    private const int Turns = 5;

    private readonly CurveSymmetry symmetry;
    private readonly Point2[] places;
    private readonly double[] parameters;
    private (Point2 Cosine, Point2 Sine)[] terms = [];

    /// <summary>Begins with places round the edge and their parameters.</summary>
    /// <param name="symmetry">What the edge is to be kept by.</param>
    /// <param name="places">Places round the edge, counter-clockwise, about their centroid with the long axis along u.</param>
    /// <param name="parameters">Their parameters, 0 at the waist at negative v, 2 pi a round.</param>
    public WaveFit(CurveSymmetry symmetry, IReadOnlyList<Point2> places, IReadOnlyList<double> parameters)
    {
        this.symmetry = symmetry;
        this.places = [.. places];
        this.parameters = [.. parameters];
        Off = new double[this.places.Length];
    }

    /// <summary>The edge, in the frame of the places as given.</summary>
    public HarmonicCurve Curve => new([.. terms.Select(t => (t.Cosine.Turned(Axis), t.Sine.Turned(Axis)))]);

    /// <summary>How far each place lies outside the edge, mm.</summary>
    public double[] Off { get; }

    /// <summary>Direction of the mirrors' axis in the frame of the places as given, radians; 0 without mirrors.</summary>
    public double Axis { get; private set; }

    /// <summary>Root mean square of <see cref="Off"/>.</summary>
    public double Rms => Math.Sqrt(DenseRows.Dot(Off, Off) / Off.Length);

    /// <summary>Values that a fit up to a wave finds, as far as they move the edge across itself.</summary>
    public int Values(int mostWave) => symmetry switch
    {
        CurveSymmetry.None => (2 * mostWave) + 1,
        CurveSymmetry.HalfTurn => mostWave + 3,
        _ => ((mostWave + 1) / 2) + 3,
    };

    /// <summary>Fits waves up to a number of turns; false where the places do not determine them.</summary>
    public bool TryFit(int mostWave)
    {
        for (int turn = 0; turn < Turns; turn++)
        {
            Wave[] along = [.. Waves(mostWave, isAlong: true)];
            Wave[] across = [.. Waves(mostWave, isAlong: false)];
            if (Solve(along, place => place.X) is not { } u || Solve(across, place => place.Y) is not { } v)
            {
                return false;
            }

            terms = new (Point2 Cosine, Point2 Sine)[mostWave + 1];
            Put(along, u, new Point2(1, 0));
            Put(across, v, new Point2(0, 1));
            MoveFeet();
        }

        return true;
    }

    private IEnumerable<Wave> Waves(int most, bool isAlong)
    {
        yield return new Wave(0, false);
        int step = symmetry == CurveSymmetry.None ? 1 : 2;
        for (int k = 1; k <= most; k += step)
        {
            if (symmetry != CurveSymmetry.Mirrors || !isAlong)
            {
                yield return new Wave(k, false);
            }

            if (symmetry != CurveSymmetry.Mirrors || isAlong)
            {
                yield return new Wave(k, true);
            }
        }
    }

    private double[]? Solve(Wave[] waves, Func<Point2, double> wanted)
    {
        NormalEquations equations = new(waves.Length);
        for (int i = 0; i < places.Length; i++)
        {
            equations.Add([.. waves.Select(wave => wave.At(parameters[i]))], wanted(places[i]));
        }

        // A share of the places below which waves cannot be told apart.
        const double least = 1e-9;
        return equations.Solve(least * places.Length);
    }

    private void Put(Wave[] waves, double[] factors, Point2 axis)
    {
        for (int i = 0; i < waves.Length; i++)
        {
            (Point2 cosine, Point2 sine) = terms[waves[i].Turns];
            Point2 term = axis * factors[i];
            terms[waves[i].Turns] = waves[i].IsSine ? (cosine, sine + term) : (cosine + term, sine);
        }
    }

    // Distances along the normal from the foot on the edge, and with mirrors the turn that makes them least.
    private void MoveFeet()
    {
        HarmonicCurve curve = new(terms);
        double pull = 0;
        double weight = 0;
        for (int i = 0; i < places.Length; i++)
        {
            // A foot moves at most this far in a turn, radians: places of an outline lie within a few hundredths of theirs.
            const double most = 0.05;
            CurvePoint here = curve.At(parameters[i]);
            Point2 apart = places[i] - here.Place;
            double step = apart.Dot(here.Derivative) / here.Derivative.Dot(here.Derivative);
            parameters[i] += Math.Clamp(step, -most, most);
            here = curve.At(parameters[i]);
            Point2 outward = -(here.Derivative * (1 / here.Derivative.Length)).Left;
            Off[i] = (places[i] - here.Place).Dot(outward);
            double lever = places[i].Left.Dot(outward);
            pull += Off[i] * lever;
            weight += lever * lever;
        }

        if (symmetry == CurveSymmetry.Mirrors)
        {
            double turn = pull / weight;
            Axis += turn;
            for (int i = 0; i < places.Length; i++)
            {
                places[i] = places[i].Turned(-turn);
            }
        }
    }

    // A cosine or a sine of whole turns round the edge.
    private readonly record struct Wave(int Turns, bool IsSine)
    {
        public double At(double parameter) => IsSine ? Math.Sin(Turns * parameter) : Math.Cos(Turns * parameter);
    }
}
