using System.Globalization;
using FeltNest.Geometry;

namespace FeltNest.Files.Outlines;

/// <summary>Makes closed loops out of the runs of a drawing: joins ends that meet, heals tiny gaps and says so, and refuses what does not
/// close.</summary>
internal sealed class LoopJoiner
{
    // Ends nearer than this, mm, are meant to meet: a rounding of a drawing, and half of what a rule die is bent to.
    private const double HealedMm = 0.05;

    // Gaps below this, mm, are rounding and not worth a word.
    private const double UnsaidMm = 1e-4;

    private readonly string file;
    private readonly List<string> notes;
    private readonly List<OpenChain> open;
    private readonly List<OpenChain> loops = [];
    private int healed;
    private double widest;

    private LoopJoiner(string file, IEnumerable<OpenChain> runs, List<string> notes)
    {
        this.file = file;
        this.notes = notes;
        open = [];
        foreach (OpenChain run in runs.Where(run => run.Vertices.Count > 1))
        {
            (run.Closed ? loops : open).Add(run);
        }
    }

    /// <summary>The vertices of the loop; frames beside it are left aside.</summary>
    /// <param name="file">Named in errors.</param>
    /// <param name="runs">What the drawing holds.</param>
    /// <param name="notes">Told what was healed.</param>
    /// <exception cref="InputException">No run at all, a run that stays open, three ends that meet, or more than one loop.</exception>
    public static IReadOnlyList<ArcVertex> Join(string file, IReadOnlyList<OpenChain> runs, List<string> notes)
    {
        IReadOnlyList<IReadOnlyList<ArcVertex>> loops = JoinAll(file, runs, notes);
        return LoopChoice.Of(file, loops, notes);
    }

    /// <summary>The vertices of every loop of a drawing.</summary>
    /// <param name="file">Named in errors.</param>
    /// <param name="runs">What the drawing holds.</param>
    /// <param name="notes">Told what was healed.</param>
    /// <exception cref="InputException">No run at all, a run that stays open, or three ends that meet.</exception>
    public static IReadOnlyList<IReadOnlyList<ArcVertex>> JoinAll(string file, IReadOnlyList<OpenChain> runs, List<string> notes)
    {
        if (runs.Count > Outline.MostPoints)
        {
            throw new InputException(file, null, $"holds {runs.Count} separate lines: at most {Outline.MostPoints} are read");
        }

        foreach (OpenChain run in runs)
        {
            RequireBounded(file, run);
        }

        return new LoopJoiner(file, runs, notes).Join();
    }

    private List<IReadOnlyList<ArcVertex>> Join()
    {
        if (open.Count + loops.Count == 0)
        {
            throw new InputException(file, null, "holds no outline: one closed loop of lines and arcs is wanted");
        }

        while (open.Count > 0)
        {
            OpenChain run = open[^1];
            open.RemoveAt(open.Count - 1);
            loops.Add(Grown(run));
        }

        List<IReadOnlyList<ArcVertex>> rings = [.. loops.Select(Ring)];
        if (healed > 0)
        {
            notes.Add(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"closed {healed} gap{(healed == 1 ? string.Empty : "s")} of at most {widest:0.####} mm"));
        }

        return rings;
    }

    // A loop without its first corner standing at its end once more.
    private List<ArcVertex> Ring(OpenChain loop)
    {
        List<ArcVertex> ring = [.. loop.Vertices];
        double gap = (loop.End - loop.Start).Length;
        if (gap <= HealedMm && ring.Count > 2)
        {
            Heal(gap);
            ring.RemoveAt(ring.Count - 1);
        }

        return ring;
    }

    // Takes from the open runs whatever goes on at the end, until the start is met.
    private OpenChain Grown(OpenChain run)
    {
        while (true)
        {
            double back = (run.End - run.Start).Length;
            bool closes = back <= HealedMm && run.Vertices.Count > 2;
            int[] next = [.. Enumerable.Range(0, open.Count).Where(i => Nearest(open[i], run.End) <= HealedMm)];
            if (next.Length + (closes ? 1 : 0) > 1)
            {
                throw new InputException(
                    file, null, $"more than two lines meet near {Place(run.End)}: one closed loop without branches is wanted");
            }

            if (closes)
            {
                return run;
            }

            if (next.Length == 0)
            {
                throw new InputException(file, null, string.Create(
                    CultureInfo.InvariantCulture,
                    $"is open: a line ends near {Place(run.End)} and nothing goes on there (its other end is {back:0.###} mm away); "
                        + $"gaps up to {HealedMm} mm are closed"));
            }

            OpenChain found = open[next[0]];
            open.RemoveAt(next[0]);
            found = (found.Start - run.End).Length <= (found.End - run.End).Length ? found : found.Reversed();
            Heal((found.Start - run.End).Length);
            run = run.Joined(found);
            RequireBounded(file, run);
        }
    }

    private static void RequireBounded(string file, OpenChain run)
    {
        if (run.Vertices.Count > Outline.MostPoints + 1)
        {
            throw new InputException(
                file, null,
                $"holds a line of more than {Outline.MostPoints} points, which is the most allowed: {Place(run.Start)} is its start");
        }
    }

    private void Heal(double gap)
    {
        if (gap > UnsaidMm)
        {
            healed++;
            widest = Math.Max(widest, gap);
        }
    }

    private static double Nearest(OpenChain run, Point2 place) => Math.Min((run.Start - place).Length, (run.End - place).Length);

    private static string Place(Point2 p) => string.Create(CultureInfo.InvariantCulture, $"({p.X:0.###}, {p.Y:0.###}) mm");
}
