using static FeltNest.InvariantText;

namespace FeltNest.Panel.Trial;

/// <summary>What a trial wrap shows, in sentences for the shop.</summary>
internal static class TrialWords
{
    /// <summary>What identical panels can show, which goes before any reading.</summary>
    public const string Rule =
        "Identical panels placed true give the same gap at the four places 1, 5, 9, 13, as the waist of one panel meets the tip of the "
            + "other. "
            + "What breaks this is no fault of the drawing.";

    /// <summary>The diagnosis, one sentence each.</summary>
    public static IReadOnlyList<string> Of(TrialFinding found)
    {
        List<string> words = [];
        if (found.Placing.Found)
        {
            words.Add(Invariant($"Placing: a panel lies off its place by up to {Widest(found):0.00} mm. ")
                + "Mend the placing; a new die does not cure it.");
        }

        if (found.Unlike.Found)
        {
            TrialPlacing worst = found.Balls.MaxBy(ball => Math.Abs(ball.Unlike.Mm))!;
            words.Add("Unlike panels, or felt pulled unevenly: "
                + Invariant($"on ball '{worst.Ball}' the waists of panel A read {worst.Unlike.Mm:+0.00;-0.00} mm and its tips ")
                + Invariant($"{-worst.Unlike.Mm:+0.00;-0.00} mm off their mean. Lay the two panels on each other and look at the pull; ")
                + "a new die does not cure it.");
        }

        words.Add(Drawing(found));
        words.Add(Seam(found));
        if (found.BallsDiffer is { Found: true })
        {
            words.Add(
                "The balls differ by more than the noise of one ball: look at core sizes and felt thickness. The intervals allow for it.");
        }

        return words;
    }

    /// <summary>A chance to four places.</summary>
    public static string Odds(TrialTest test) => test.Chance < 0.0001 ? "below 0.0001" : Invariant($"{test.Chance:0.0000}");

    private static double Widest(TrialFinding found) => found.Balls
        .Max(ball => new[] { ball.Along, ball.Across, ball.Turn }.Max(amount => Math.Abs(amount.Mm)));

    private static string Drawing(TrialFinding found)
    {
        if (!found.Panel.Found)
        {
            return Invariant($"Drawing: what a panel can mend is within the noise of the readings (chance {Odds(found.Panel)}): ")
                + "keep the die.";
        }

        TrialPlace most = found.Places.MaxBy(place => Math.Abs(place.Fitted.Mm - found.AimMm))!;
        return Invariant(
            $"Drawing: the panels alone leave {most.Fitted.Mm:0.00} +- {most.Fitted.IntervalMm:0.00} mm at place {most.Number} ")
            + Invariant($"where {found.AimMm:0.00} mm is aimed at; more than noise (chance {Odds(found.Panel)}).");
    }

    private static string Seam(TrialFinding found)
    {
        if (found.Seam is not { } seam)
        {
            return "Gaps alone give the sum of both edges at a place. No waist was measured, so where the seam lies is not known: "
                + "both edges are moved alike.";
        }

        string where = Invariant($"the seam lies {seam.Mm:+0.00;-0.00;0.00} +- {seam.IntervalMm:0.00} mm out of its place at the waists");
        return seam.IsFound
            ? $"Seam: {where}; the correction moves it back."
            : $"Seam: {where}, within the noise; it is left where it is.";
    }
}
