namespace FeltNest.Cli;

/// <summary>The option under which each thing is asked for on the command line.</summary>
internal static class OptionNames
{
    /// <summary>The option's name.</summary>
    public static string Of(AskedFor asked) => asked switch
    {
        AskedFor.RollWidth => "--width",
        AskedFor.EdgeTrims => "--edge",
        AskedFor.Gap => "--gap",
        AskedFor.WarpAngle => "--warp-angle",
        AskedFor.WarpTolerance => "--warp-tolerance",
        AskedFor.Rows => "--rows",
        AskedFor.Effort => "--effort",
        AskedFor.Bands => "--bands",
        AskedFor.ForbiddenStripes => "--forbid",
        AskedFor.DiePanels => "--die-panels",
        AskedFor.DieBed => "--die-bed",
        AskedFor.LeastRepeat => "--least-repeat",
        AskedFor.Plies => "--plies",
        AskedFor.SecondPart => "--second",
        AskedFor.SecondShare => "--second-share",
        AskedFor.Waists => "--waist-range",
        AskedFor.RepeatsPerStrike => "--repeats-per-strike",
        AskedFor.RollDie => "--die",
        AskedFor.SideShift => "--side-shift",
        AskedFor.PlanFrom => "--from",
        AskedFor.DieLife => "--life",
        AskedFor.KeptDie => "--keep-die",
        AskedFor.KeptFeed => "--keep-feed",
        AskedFor.Balls => "--balls",
        AskedFor.Band => "--band",
        AskedFor.DiePart => "--part",
        AskedFor.Offers => "--offers",
        AskedFor.HeldValues => "--hold",
        AskedFor.Resolution => "--dpi",
        AskedFor.ListDays => "--dates",
        AskedFor.ListSheet => "--worksheet",
        AskedFor.Insisted => "--sure",
        AskedFor.Book => "--book",
        AskedFor.BroughtInAgain => "--again",
        AskedFor.MoreOfTicket => "--more",
        AskedFor.ChangedOrders => "--change",
        AskedFor.CutRoll => "--roll",
        AskedFor.SetValues => "--set",
        _ => throw new ArgumentOutOfRangeException(nameof(asked), asked, "has no option"),
    };

    /// <summary>A fault as it is told on the command line.</summary>
    public static string LineOf(Exception error) => error switch
    {
        InputException { Asked: { } asked, File: null } input => $"{Of(asked)}: {input.Problem}",
        InputException { Mend: { } mend } => $"{error.Message} ({Of(mend)})",
        _ => error.Message,
    };

    /// <summary>A fault as it is told on the command line, with all further ones of its list: one line each.</summary>
    public static IEnumerable<string> LinesOf(Exception error) =>
        [LineOf(error), .. error is InputException input ? input.Further.Select(LineOf) : []];
}
