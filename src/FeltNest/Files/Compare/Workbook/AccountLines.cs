using FeltNest.Cost.Compare;
using FeltNest.Files.Workbooks;
using static FeltNest.Files.Compare.Workbook.OfferLines;

namespace FeltNest.Files.Compare.Workbook;

/// <summary>The sheet of the felt account over one roll, all of it formulas; over a metre of felt where no length of a roll is
/// known.</summary>
internal static class AccountLines
{
    /// <summary>The sheet.</summary>
    public static LineSheet Of(Comparison comparison, LineSheet shop, LineSheet offers)
    {
        int columns = comparison.Rows.Count;
        LineSheet account = new("account", columns, "Where the felt of one roll goes");
        Func<int, string> name = i => offers.At("name", i);
        account.Line("name", "name", string.Empty, i => WorkbookCell.Formula(name(i), CellLook.Heading));
        void Line(string key, string words, string unit, Func<Func<string, string>, Func<string, string>, string> formula) =>
            account.Line(
                key, words, unit, i => WorkbookCell.Formula(formula(o => offers.At(o, i), a => account.At(a, i))));
        Line("roll", "roll", "mm", (o, _) => $"1000*IF({o("roll")}=0,1,{o("roll")})");
        Line("ends", "both ends", "mm", (o, _) => $"IF({o("roll")}=0,0,2*{shop.At("end")})");
        Line("clear", "between them", "mm", (_, a) => $"{a("roll")}-{a("ends")}");
        for (int band = 0; band < MostBands(comparison); band++)
        {
            Band(account, comparison, offers, band);
        }

        Sums(account, comparison, Line);
        account.Heading("Shares of the panels cut");
        Line("f", "lost to faults", string.Empty, (o, _) => $"{o("fault")}/100");
        Line("r", "rejected", string.Empty, (_, a) => $"(1-{a("f")})*{shop.At("reject")}/100");
        Line("u", "without a partner", string.Empty, (_, a) => $"(1-{a("f")}-{a("r")})*{shop.At("unpaired")}/100");
        Line("g", "good", string.Empty, (_, a) => $"1-{a("f")}-{a("r")}-{a("u")}");
        account.Heading("For a thousand good balls");
        Line("balls", "balls of a roll", string.Empty, (_, a) => $"{a("panels")}*{a("g")}/2");
        Line("metres", "felt", "m", (_, a) => $"{a("roll")}/{a("balls")}");
        Line("m2", "felt", "m2", (o, a) => $"{a("metres")}*{o("width")}/1000");
        Line("kg", "felt", "kg", (o, a) => $"IF({o("mass")}=0,\"not given\",{a("m2")}*{o("mass")}/1000)");
        Line("net", "felt in good panels", "m2", (_, a) => $"{a("area")}*{a("g")}/{a("balls")}/1000");
        Line("strikes", "strikes", string.Empty, (o, a) => $"1000*{a("struck")}/{o("plies")}/{a("balls")}");
        Line("cavities", "panels of one layer a strike cuts", string.Empty, (_, a) => $"{a("panels")}/{a("struck")}");
        Shares(account, Line);
        return account;
    }

    private static void Band(LineSheet account, Comparison comparison, LineSheet offers, int band)
    {
        account.Heading(band == 0 ? "Strikes along the roll" : FormattableString.Invariant($"Strikes of band {band + 1}"));
        void Line(string key, string words, string unit, Func<BandCells, string> formula) => account.Line(
            BandKey(key, band), words, unit, i => band < comparison.Rows[i].Layout.Bands.Count
                ? WorkbookCell.Formula(formula(new BandCells { Offers = offers, Account = account, Band = band, Column = i }))
                : null);
        Line("most", "panels a strike may cut", string.Empty, c => $"IF(ISBLANK({c.Own("most")}),{c.Of("panels")},{c.Own("most")})");
        Line(
            "together", "repeats of a strike", string.Empty,
            c => $"IF({c.Of("strikes")}>1,1,MAX(1,INT({c.Worked("most")}/{c.Of("panels")})))");
        Line(
            "each", "strikes of a step", string.Empty,
            c => $"IF({c.Of("strikes")}>1,{c.Of("strikes")},INT(({c.Of("panels")}+{c.Worked("most")}-1)/{c.Worked("most")}))");
        Line("step", "step", "mm", c => $"{c.Of("repeat")}*{c.Worked("together")}");
        Line(
            "fit", "steps that fit, with rounding", string.Empty,
            c => $"IF({c.Own("roll")}=0,{c.Whole("clear")}/{c.Worked("step")},"
                + $"INT(({c.Whole("clear")}-{c.Of("over")})/{c.Worked("step")}+0.000000001))");

        // A roll shorter than one strike has no answer.
        Line("steps", "steps", string.Empty, c => $"IF(AND({c.Own("roll")}<>0,{c.Worked("fit")}<1),NA(),{c.Worked("fit")})");
        Line("cut", "length cut", "mm", c => $"MIN({c.Worked("steps")}*{c.Worked("step")},{c.Whole("clear")})");
        Line("count", "panels", string.Empty, c => $"{c.Worked("steps")}*{c.Worked("together")}*{c.Of("panels")}");
        Line("panelarea", "their area", "mm2", c => $"{c.Worked("steps")}*{c.Worked("together")}*{c.Of("area")}");
        Line("struck", "strikes", string.Empty, c => $"{c.Worked("steps")}*{c.Worked("each")}");
        Line("cutarea", "felt cut", "mm2", c => $"{c.Worked("cut")}*{c.Of("height")}");
        Line("leftarea", "felt behind the last strike", "mm2", c => $"({c.Whole("clear")}-{c.Worked("cut")})*{c.Of("height")}");
        Line("height", "width of felt it takes", "mm", c => c.Of("height"));
    }

    private static void Sums(
        LineSheet account, Comparison comparison,
        Action<string, string, string, Func<Func<string, string>, Func<string, string>, string>> line)
    {
        int bands = MostBands(comparison);
        account.Heading("All of it");
        void Sum(string key, string of, string words, string unit, string how = "SUM") => line(
            key, words, unit, (_, a) => $"{how}({string.Join(',', Enumerable.Range(0, bands).Select(band => a(BandKey(of, band))))})");
        Sum("panels", "count", "panels", string.Empty);
        Sum("area", "panelarea", "their area", "mm2");
        Sum("struck", "struck", "strikes", string.Empty);
        Sum("cutarea", "cutarea", "felt cut", "mm2");
        Sum("leftarea", "leftarea", "felt behind the last strike", "mm2");
        Sum("longest", "cut", "longest cut", "mm", "MAX");
        Sum("heights", "height", "width of felt taken", "mm");
    }

    private static void Shares(
        LineSheet account, Action<string, string, string, Func<Func<string, string>, Func<string, string>, string>> line)
    {
        account.Heading("Shares of the roll");
        line("all", "whole roll", "mm2", (o, a) => $"{a("roll")}*{o("width")}");
        line("usable", "usable width", "mm", (o, _) => $"{o("width")}-{o("trim")}");
        line("edgearea", "unused edge", "mm2", (o, a) => $"{a("longest")}*{o("unused")}");
        line(
            "webarea", "web", "mm2",
            (_, a) => $"{a("cutarea")}+({a("usable")}-{a("heights")})*{a("longest")}-{a("area")}-{a("edgearea")}");
        line(
            "remnantarea", "remnant", "mm2",
            (_, a) => $"{a("leftarea")}+({a("usable")}-{a("heights")})*({a("clear")}-{a("longest")})");
        Percent("good", "good panels", (_, a) => $"{a("area")}*{a("g")}");
        Percent("web", "web between panels", (_, a) => a("webarea"));
        Percent("edge", "unused edge", (_, a) => a("edgearea"));
        Percent("trim", "edge trim", (o, a) => $"{o("trim")}*{a("roll")}");
        Percent("rollends", "roll ends", (_, a) => $"{a("ends")}*{a("usable")}");
        Percent("remnant", "remnant", (_, a) => a("remnantarea"));
        Percent("faults", "faults", (_, a) => $"{a("area")}*{a("f")}");
        Percent("rejects", "rejects", (_, a) => $"{a("area")}*{a("r")}");
        Percent("lonely", "unpaired", (_, a) => $"{a("area")}*{a("u")}");

        void Percent(string key, string words, Func<Func<string, string>, Func<string, string>, string> area) =>
            line(key, words, "%", (o, a) => $"100*({area(o, a)})/{a("all")}");
    }

    // Where the cells of one band of one column stand.
    private readonly record struct BandCells
    {
        public required LineSheet Offers { get; init; }

        public required LineSheet Account { get; init; }

        public required int Band { get; init; }

        public required int Column { get; init; }

        // A figure of the band's layout.
        public string Of(string key) => Offers.At(BandKey(key, Band), Column);

        // What is worked out for the band.
        public string Worked(string key) => Account.At(BandKey(key, Band), Column);

        // A figure of the offer.
        public string Own(string key) => Offers.At(key, Column);

        // What is worked out for the whole roll.
        public string Whole(string key) => Account.At(key, Column);
    }
}
