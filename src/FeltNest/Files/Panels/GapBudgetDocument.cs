using FeltNest.Ball.Tolerance;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Panels;

/// <summary>Budget of the seam gap: every field of <c>feltnest/gap-budget/1</c>.</summary>
internal static class GapBudgetDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.GapBudget, Title = "Budget of the seam gap", Fields = Fields };

    public static readonly TextField Ball = Fields.Add(new TextField("ball", "name of the ball"));
    public static readonly EnumField<ToleranceReading> ReadAs = Fields.Add(
        new EnumField<ToleranceReading>("readAs", "how the tolerances are read"));
    public static readonly WholeField Balls = Fields.Add(new WholeField("balls", 1, NumberField.NoMost, "balls counted"));
    public static readonly ObjectField Adhesive = Fields.Add(
        new ObjectField("adhesive", AdhesiveFields.Set, "gaps that the edge adhesive bridges; null where the ball states none")
        {
            OrNull = true,
        });
    public static readonly ObjectsField Sources = Fields.Add(
        new ObjectsField("sources", SourceFields.Set, "tolerances in the budget"));
    public static readonly TextsField NotInBudget = Fields.Add(
        new TextsField("notInBudget", "fields of tolerances that the ball does not state: what they do is not counted"));
    public static readonly ObjectField AtFitting = Fields.Add(
        new ObjectField("atFitting", StateFields.Set, "as cut, at fitting, with nothing pulling the edges"));
    public static readonly ObjectField AfterCure = Fields.Add(
        new ObjectField("afterCure", StateFields.Set, "after the felt has shrunk in the cure; null where it does not shrink")
        {
            OrNull = true,
        });

    /// <summary>Fields of <c>adhesive</c>.</summary>
    internal static class AdhesiveFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField LeastMm = Set.Add(new NumberField("leastMm", "least gap"));
        public static readonly NumberField MostMm = Set.Add(new NumberField("mostMm", "greatest gap"));
    }

    /// <summary>Fields of <c>sources[]</c>.</summary>
    internal static class SourceFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Field = Set.Add(new TextField("field", "of the ball file"));
        public static readonly TextField Words = Set.Add(new TextField("words", "what is off"));
        public static readonly TextField Unit = Set.Add(new TextField("unit", "of the tolerance") { OrNull = true });
        public static readonly NumberField PlusMinus = Set.Add(new NumberField("plusMinus", 0, NumberField.NoMost, "the tolerance"));
    }

    /// <summary>Fields of <c>atFitting</c> and <c>afterCure</c>.</summary>
    internal static class StateFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextsField Verdict = Set.Add(new TextsField("verdict", "what the budget says, one sentence each"));
        public static readonly NumberField NominalLeastMm = Set.Add(new NumberField("nominalLeastMm", "least gap with nothing off"));
        public static readonly NumberField NominalMostMm = Set.Add(new NumberField("nominalMostMm", "greatest gap with nothing off"));
        public static readonly NumberField WorstLeastMm = Set.Add(
            new NumberField("worstLeastMm", "least gap anywhere in the worst case, added up part by part from their ends"));
        public static readonly NumberField WorstMostMm = Set.Add(new NumberField("worstMostMm", "greatest gap likewise"));
        public static readonly NumberField SolvedLeastMm = Set.Add(
            new NumberField("solvedLeastMm", "least gap solved with all parts off together; null where felt cannot be off so far")
            {
                OrNull = true,
            });
        public static readonly NumberField SolvedMostMm = Set.Add(
            new NumberField("solvedMostMm", "greatest gap likewise") { OrNull = true });
        public static readonly NumberField RootLeastMm = Set.Add(new NumberField("rootLeastMm", "least gap by the root sum square"));
        public static readonly NumberField RootMostMm = Set.Add(new NumberField("rootMostMm", "greatest gap likewise"));
        public static readonly NumberField BallsWithinPercent = Set.Add(
            new NumberField("ballsWithinPercent", 0, 100, "balls whose whole seam lies within the adhesive's range; null without one")
            {
                OrNull = true,
            });
        public static readonly NumberField SeamWithinPercent = Set.Add(
            new NumberField("seamWithinPercent", 0, 100, "length of seam within it, over all balls; null likewise") { OrNull = true });
        public static readonly ObjectField Least = Set.Add(
            new ObjectField("least", SpreadOfBalls.Set, "how the least gap of a ball is spread"));
        public static readonly ObjectField Most = Set.Add(
            new ObjectField("most", SpreadOfBalls.Set, "how the greatest gap of a ball is spread"));
        public static readonly ObjectsField Shares = Set.Add(
            new ObjectsField("shares", ShareFields.Set, "the tolerances, the one to buy down first first"));
        public static readonly RowsField Stations = Set.Add(new RowsField(
            "stations", ["s", "alongMm", "lengthMm", "gapMm", "worstLeastMm", "worstMostMm", "rootSumSquareMm"],
            "places round the seam from the waist: seam parameter, way round the seam, length of seam it stands for, gap with nothing "
                + "off, least and greatest gap in the worst case, root sum square"));
        public static readonly RowsField Within = Set.Add(new RowsField(
            "within", ["station", "percent"], "balls within the adhesive's range at each place; empty without one"));
        public static readonly ObjectsField Effects = Set.Add(
            new ObjectsField("effects", EffectFields.Set, "what each part does at each place; a part of the placing twice, once a panel"));
    }

    /// <summary>Fields of <c>least</c> and <c>most</c>.</summary>
    internal static class SpreadOfBalls
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField MeanMm = Set.Add(new NumberField("meanMm"));
        public static readonly NumberField DeviationMm = Set.Add(new NumberField("deviationMm", "standard deviation"));
        public static readonly NumberField Low1Mm = Set.Add(new NumberField("low1Mm", "one ball in a hundred lies below"));
        public static readonly NumberField Low5Mm = Set.Add(new NumberField("low5Mm", "five in a hundred lie below"));
        public static readonly NumberField MiddleMm = Set.Add(new NumberField("middleMm", "half of the balls lie below"));
        public static readonly NumberField High5Mm = Set.Add(new NumberField("high5Mm", "five in a hundred lie above"));
        public static readonly NumberField High1Mm = Set.Add(new NumberField("high1Mm", "one in a hundred lies above"));
    }

    /// <summary>Fields of <c>shares[]</c>.</summary>
    internal static class ShareFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Rank = Set.Add(new WholeField("rank", 1, NumberField.NoMost, "1 is to be bought down first"));
        public static readonly TextField Field = Set.Add(new TextField("field", "of the ball file"));
        public static readonly NumberField GreatestMm = Set.Add(
            new NumberField("greatestMm", "greatest change of the gap anywhere from the middle to an end of the tolerance"));
        public static readonly NumberField BendMm = Set.Add(
            new NumberField("bendMm", "greatest part of it that is the same at both ends: half of the second difference"));
        public static readonly NumberField VariancePercent = Set.Add(
            new NumberField("variancePercent", 0, 100, "share of the variance of the gap, mean over the seam's length"));
        public static readonly NumberField GainPercent = Set.Add(
            new NumberField("gainPercent", "points of balls within the range that are won when it is halved; null without one")
            {
                OrNull = true,
            });
        public static readonly NumberField GainErrorPercent = Set.Add(
            new NumberField("gainErrorPercent", 0, NumberField.NoMost, "standard error of the gain by the count of balls; null likewise")
            {
                OrNull = true,
            });
    }

    /// <summary>Fields of <c>effects[]</c>.</summary>
    internal static class EffectFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Field = Set.Add(new TextField("field", "of the ball file"));
        public static readonly WordField Panels = Set.Add(
            new WordField("panels", ["both", "A", "B"], "panels that are off: both alike, or one; places lie on the edge of A"));
        public static readonly RowsField Ends = Set.Add(new RowsField(
            "ends", ["minusMm", "plusMm"], "change of the gap at each place with the part off by its tolerance downwards and upwards"));
    }
}
