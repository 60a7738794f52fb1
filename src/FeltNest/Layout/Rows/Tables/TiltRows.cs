using System.Runtime.CompilerServices;

namespace FeltNest.Layout.Rows.Tables;

/// <summary>All row layouts of one part (or pair of parts) at one tilt, one of it per pitch in every row, from one sampled step
/// table.</summary>
internal sealed class TiltRows
{
    // Layouts below this share of the best of their tilt are not looked for pitch by pitch.
    private const double WorthScanning = 0.98;

    // No strip is fuller than its area, and sampled parts may overlap by a few samples: more rows than this share of the area holds need
    // more than the widest pitch.
    private const double FullestStrip = 1.1;

    // A part reaches over so many copies of its row at most before the pitch is shorter than any that fits.
    private const int MostCopies = 4;

    // Samples by which a step may read too high and count as open. A hair more than one: at the end of a closed run the reading is just
    // what closed it, but for rounding.
    private const double OpenShare = 1.001;

    private readonly TurnedPart part;
    private readonly double slack;
    private readonly StepTable steps;

    /// <param name="part">Part or pair at its tilt.</param>
    /// <param name="slack">How far a pair may pass the width because its second part's place is only known to about that, mm.</param>
    internal TiltRows(TurnedPart part, double slack = 0)
        : this(part, Math.Max(slack, part.Grid), StepTable.Make(part, part))
    {
    }

    private TiltRows(TurnedPart part, double slack, StepTable steps) =>
        (this.part, this.slack, this.steps, OwnPitch) = (part, slack, steps, Reach(steps));

    /// <summary>Rows of the part mirrored along the roll.</summary>
    internal TiltRows Mirrored() => new(part.Mirrored(), slack, steps.Mirrored());

    internal double Tilt => part.Tilt;

    internal double Height => part.Height;

    /// <summary>Least pitch of a single row.</summary>
    internal double OwnPitch { get; }

    /// <summary>Pitch beyond which rows stand in each other's openings and a row count has no meaning any more.</summary>
    internal double WidestPitch => steps.MaxShift - steps.MinShift;

    /// <summary>Least pitch at which <paramref name="rows"/> rows fit a free width, with the shift and step from row to row; null when they
    /// never do, or only above
    /// <paramref name="mostPitch"/> with rows that reach past their neighbours.</summary>
    internal RowLattice? Fit(int rows, double width, double mostPitch = 0)
    {
        double room = Room(width);
        if (room < 0)
        {
            return null;
        }

        if (rows == 1)
        {
            return new RowLattice { Tilt = Tilt, Rows = 1, Pitch = OwnPitch, Shift = 0, Step = 0 };
        }

        double step = room / (rows - 1);
        return (LeastPitch(rows, step) ?? DeepPitch(rows, step, mostPitch)) is { } found
            ? new RowLattice { Tilt = Tilt, Rows = rows, Pitch = found.Pitch, Shift = found.Shift, Step = step }
            : null;
    }

    /// <summary>Fits of every row count, from the last that leaves the rows loose to the one whose step is <paramref name="deepest"/> of
    /// the loose step.</summary>
    internal IEnumerable<RowLattice> Fits(double width, double deepest)
    {
        double loose = Math.Max(Plane().Step, 1e-3 * Height);
        double room = Room(width);
        double best = 0;
        double most = Math.Min(1 + (room / (deepest * loose)), FullestStrip * width * WidestPitch / part.Area);
        for (int rows = Math.Max(1, (int)Math.Floor(room / loose)); room >= 0 && rows <= Math.Max(1, most); rows++)
        {
            if (Fit(rows, width, Math.Min(WidestPitch, rows / (WorthScanning * best))) is { } fit && fit.Pitch <= WidestPitch)
            {
                best = Math.Max(best, fit.Density);
                yield return fit;
            }
        }
    }

    // A part that fills the width exactly may miss it by rounding; a little more is let through, the polish restores it.
    private double Room(double width) => width - Height is < 0 and var room && room > -slack ? 0 : width - Height;

    /// <summary>The densest lattice of the plane that has <see cref="OwnPitch"/> along the row.</summary>
    internal RowLattice Plane()
    {
        (double step, double shift) = steps.LeastOverRow(OwnPitch);
        return new RowLattice { Tilt = Tilt, Rows = 2, Pitch = OwnPitch, Shift = shift, Step = step };
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private (double Pitch, double Shift)? LeastPitch(int rows, double step)
    {
        // A sample more than the step: valleys between two samples read up to that much too high, and the polish restores what is too near.
        List<(double From, double To)> closed = steps.Above(step + steps.Grid);
        if (closed.Count == 0)
        {
            return (OwnPitch, OwnPitch / 2);
        }

        foreach (double pitch in Pitches(closed))
        {
            double? best = null;
            double widest = -1;
            foreach ((_, double to) in closed)
            {
                double open = OpenAfter(to, pitch, closed);
                if (open > widest)
                {
                    (best, widest) = (to + (open / 2), open);
                }
            }

            if (best is { } shift && (rows < 3 || !OverlapsNextButOne(shift, step, pitch)))
            {
                return (pitch, shift);
            }
        }

        return null;
    }

    // Pitches at which the open places change, least first.
    private List<double> Pitches(List<(double From, double To)> closed)
    {
        List<double> pitches = [OwnPitch];
        foreach ((_, double to) in closed)
        {
            foreach ((double from, _) in closed)
            {
                // A place may be the end of one closed run and the start of another one, any whole number of pitches on.
                for (int n = 1; n <= MostCopies && to - from > n * OwnPitch; n++)
                {
                    pitches.Add((to - from) / n);
                }
            }
        }

        pitches.Sort();
        return pitches;
    }

    // Rows that reach past their neighbours meet the rows beyond too. Each row still touches the next, so the shift is an end of a closed
    // run; the pitch is looked for step by step, and every row that can be met is asked.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private (double Pitch, double Shift)? DeepPitch(int rows, double step, double mostPitch)
    {
        List<(double From, double To)> closed = steps.Above(step + steps.Grid);
        int deep = Math.Min(rows - 1, (int)(steps.Highest / step));
        double least = OwnPitch;
        foreach ((double from, double to) in closed)
        {
            least = Math.Max(least, to - from);
        }

        for (double pitch = least; pitch <= mostPitch; pitch += steps.Grid)
        {
            foreach ((_, double shift) in closed)
            {
                bool open = true;
                for (int n = 1; n <= deep && open; n++)
                {
                    open = steps.AtRow(n * shift, pitch) <= (n * step) + (OpenShare * steps.Grid);
                }

                if (open)
                {
                    return (pitch, shift);
                }
            }
        }

        return null;
    }

    // How far the shifts stay open from `place` on, all copies of the closed runs considered; negative when closed.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double OpenAfter(double place, double pitch, List<(double From, double To)> closed)
    {
        double room = pitch;
        double hair = 1e-9 * pitch;
        foreach ((double from, double to) in closed)
        {
            double start = from - place - (Math.Floor((from - place) / pitch) * pitch);
            start = start > pitch - hair ? start - pitch : start;

            // The copy one pitch back must not reach past the place.
            if (start - pitch + (to - from) > hair)
            {
                return -1;
            }

            room = Math.Min(room, Math.Max(0, start));
        }

        return room;
    }

    // Sampled tables are off by up to about a sample; the polish sees to the rest.
    private bool OverlapsNextButOne(double shift, double step, double pitch) => steps.AtRow(2 * shift, pitch) > (2 * step) + steps.Grid;

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double Reach(StepTable steps)
    {
        double reach = 0;
        List<(double From, double To)> runs = steps.Above(0);
        foreach ((double from, double to) in runs)
        {
            foreach ((double otherFrom, double otherTo) in runs)
            {
                double low = Math.Max(from, -otherTo);
                double high = Math.Min(to, -otherFrom);
                reach = low < high ? Math.Max(reach, high) : reach;
            }
        }

        return reach;
    }
}
