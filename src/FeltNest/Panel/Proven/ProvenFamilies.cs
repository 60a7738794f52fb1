using FeltNest.Ball;
using FeltNest.Geometry;

namespace FeltNest.Panel.Proven;

/// <summary>Fits a ball to a measured outline by each seam family, and ranks them.</summary>
internal static class ProvenFamilies
{
    // Another family than the ball's own is taken where its rms is this share of it at most, and lower by this, mm: tracing noise alone
    // makes one family a little better than another.
    private const double NearerShare = 0.9;
    private const double NearerMm = 0.005;

    private static readonly SeamFamily[] All = [SeamFamily.TwoHarmonic, SeamFamily.FourArc, SeamFamily.Elastica];

    /// <summary>The fit of the ball's own family, or of another that comes clearly nearer, with all families ranked.</summary>
    /// <exception cref="InputException">As <see cref="ProvenPanel.Fit"/>.</exception>
    /// <exception cref="NoAnswerException">No family comes near the outline.</exception>
    public static ProvenFit Fit(BallSpec ball, ArcOutline outline, ProvenHold hold)
    {
        ProvenPanel.Refuse(ball, hold);
        Task<(ProvenFit? Fit, NoAnswerException? None)>[] tried =
        [
            .. All.Select(family => Task.Run(() => Tried(family, ball, outline, hold))),
        ];
        (ProvenFit? Fit, NoAnswerException? None)[] found = [.. tried.Select(one => one.GetAwaiter().GetResult())];
        List<ProvenFit> fits = [.. found.Select(one => one.Fit).OfType<ProvenFit>()];
        NoAnswerException? own = found.Where((_, i) => All[i] == ball.Seam.Curve).Select(one => one.None).FirstOrDefault();
        ProvenFit? usual = fits.Find(fit => fit.Ball.Seam.Curve == ball.Seam.Curve);
        ProvenFit best = fits.MinBy(fit => fit.RmsMm)
            ?? throw new NoAnswerException((own?.Message ?? "no panel of this ball comes near") + "; no other seam family does");
        bool keeps = usual is not null && !(best.RmsMm < NearerShare * usual.RmsMm && best.RmsMm < usual.RmsMm - NearerMm);
        ProvenFit taken = keeps ? usual! : best;
        return taken with
        {
            Families =
            [
                .. fits.OrderBy(fit => fit.RmsMm).Select(fit => new ProvenFamily
                {
                    Curve = fit.Ball.Seam.Curve,
                    RmsMm = fit.RmsMm,
                    NeutralLayer = fit.Ball.Felt.NeutralLayer,
                    WaistMm = fit.Ball.Seam.WaistMm,
                }),
            ],
        };
    }

    private static (ProvenFit? Fit, NoAnswerException? None) Tried(
        SeamFamily family, BallSpec ball, ArcOutline outline, ProvenHold hold)
    {
        try
        {
            return (ProvenPanel.Fit(ball with { Seam = ball.Seam with { Curve = family } }, outline, hold), null);
        }
        catch (NoAnswerException none)
        {
            return (null, none);
        }
        catch (InputException) when (family != ball.Seam.Curve)
        {
            // The family has no seam of this waist: it is left out.
            return (null, null);
        }
    }
}
