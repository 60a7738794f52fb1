using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Page.Inputs;
using FeltNest.Panel;
using FeltNest.Runs;

namespace FeltNest.Page.Work;

/// <summary>The work behind the page: the same calls as the command line makes, with what is slow kept for the next question.</summary>
internal sealed class PageWork(BallShelf shelf) : IDisposable
{
    // Panels and scans kept: a few trials back and forth.
    private const int Panels = 16;
    private const int Scans = 8;

    // Scans are made for widths up to this share above the one asked, in steps of this many mm, so that dragging the width needs no new
    // one.
    private const double Above = 1.25;
    private const double StepMm = 250;

    private const int Seed = 1;

    private readonly RecentStore<PageCover, PagePanel> panels = new(Panels);
    private readonly RecentStore<ScanKey, ScanRun> scans = new(Scans);

    // As many searches at once as there are cores, and as many short answers beside them: a width that is dragged never waits for the
    // searches of widths it has left. Who waits is told to go when its client is gone.
    private readonly SemaphoreSlim searches = new(Environment.ProcessorCount);
    private readonly SemaphoreSlim shortWork = new(Environment.ProcessorCount);

    /// <inheritdoc/>
    public void Dispose()
    {
        searches.Dispose();
        shortWork.Dispose();
    }

    /// <summary>The panel asked for.</summary>
    /// <exception cref="InputException">The waist or the limit does not go with the ball.</exception>
    /// <exception cref="NoAnswerException">No panel keeps the limit.</exception>
    public PagePanel Panel(PageInputs inputs) => panels.Get(inputs.Cover, () =>
    {
        BallSpec ball = shelf.Of(inputs.Cover);
        FlatPanel flat = PanelFlattener.Flatten(ball);
        return new PagePanel(ball, flat, CoverPart.Of(ball, flat));
    });

    /// <summary>The question to the layout engine.</summary>
    public static LayoutRequest Request(PageInputs inputs, LayoutPart part)
    {
        double? warp = inputs.WarpFree ? null : inputs.Warp ?? part.WarpAngleDeg;
        return new LayoutRequest
        {
            Part = part,
            RollWidthMm = inputs.WidthMm,
            Trims = new EdgeTrims { LowerMm = inputs.LowerTrimMm, UpperMm = inputs.UpperTrimMm },
            GapMm = inputs.GapMm,
            Rules = new LayoutRules(warp, 0, inputs.Rows, inputs.OneWay),
            Effort = inputs.Effort,
            Seed = Seed,
        };
    }

    /// <summary>Parallel rows over many widths, for the first answer and the chart.</summary>
    public ScanRun Scan(PageInputs inputs, LayoutRequest request)
    {
        double widest = StepMm * Math.Ceiling(request.RollWidthMm * Above / StepMm);
        ScanKey key = new()
        {
            Cover = inputs.Cover,
            GapMm = inputs.GapMm,
            Trims = request.Trims,
            WarpDeg = request.Rules.WarpAngleDeg,
            OneWay = inputs.OneWay,
            WidestMm = widest,
        };
        return scans.Get(
            key, () => new ScanRun(request with { RollWidthMm = widest, Effort = 1, Rules = request.Rules with { Rows = RowRule.Same } }));
    }

    /// <summary>Runs a search, or what may wait for one.</summary>
    /// <exception cref="OperationCanceledException">The client is gone.</exception>
    public Task<T> Searched<T>(Func<T> work, CancellationToken gone) => In(searches, work, gone);

    /// <summary>Runs what takes tenths of a second and is waited for.</summary>
    /// <exception cref="OperationCanceledException">The client is gone.</exception>
    public Task<T> AtOnce<T>(Func<T> work, CancellationToken gone) => In(shortWork, work, gone);

    private static async Task<T> In<T>(SemaphoreSlim room, Func<T> work, CancellationToken gone)
    {
        await room.WaitAsync(gone);
        try
        {
            T done = await Task.Run(work, gone);
            gone.ThrowIfCancellationRequested();
            return done;
        }
        finally
        {
            room.Release();
        }
    }
}
