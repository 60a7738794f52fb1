using FeltNest.Files.Fields;
using FeltNest.Panel.Trial;

namespace FeltNest.Files.Trials;

/// <summary>Readings of a trial wrap and what they show: every field of <c>feltnest/trial/1</c>.</summary>
internal static class TrialDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.Trial, Title = "Readings of a trial wrap", Fields = Fields };

    public static readonly TextField Ball = Fields.Add(new TextField("ball", "name of the ball"));
    public static readonly TextField Readings = Fields.Add(new TextField("readings", "name of the readings"));
    public static readonly NumberField AimMm = Fields.Add(new NumberField("aimMm", "gap aimed at: the ball's seam gap"));
    public static readonly TextsField Diagnosis = Fields.Add(new TextsField("diagnosis", "what the readings show, one sentence each"));
    public static readonly NumberField NoiseMm = Fields.Add(
        new NumberField("noiseMm", "standard deviation of one reading: what panel, placing and unlike panels leave"));
    public static readonly WholeField Freedom = Fields.Add(new WholeField("freedom", "freedoms of the noise"));
    public static readonly ObjectField Panel = Fields.Add(
        new ObjectField("panel", TestFields.Set, "whether the gap is off the one aimed at by what a panel can mend"));
    public static readonly ObjectField Placing = Fields.Add(
        new ObjectField("placing", TestFields.Set, "whether panels are placed askew on the balls"));
    public static readonly ObjectField Unlike = Fields.Add(
        new ObjectField("unlike", TestFields.Set, "whether the two panels of a ball are unlike or pulled unevenly"));
    public static readonly ObjectField BallsDiffer = Fields.Add(
        new ObjectField("ballsDiffer", TestFields.Set, "whether the balls differ by more than the noise of one ball; null for one ball")
        {
            OrNull = true,
        });
    public static readonly ObjectsField Parts = Fields.Add(
        new ObjectsField(
            "parts", PartFields.Set, "smooth parts of the gap beside the one aimed at, that identical centred panels can show"));
    public static readonly WholeField Waists = Fields.Add(new WholeField("waists", "waists measured"));
    public static readonly ObjectField Seam = Fields.Add(
        new ObjectField("seam", AmountFields.Set, "how far the seam lies out of its place at the waists; null where none was measured")
        {
            OrNull = true,
        });
    public static readonly ObjectsField Balls =
        Fields.Add(new ObjectsField("balls", BallFields.Set, "what panels cannot show, ball by ball"));
    public static readonly ObjectsField Places =
        Fields.Add(new ObjectsField("places", PlaceFields.Set, "the numbered places round the seam"));
    public static readonly ObjectField Cut = Fields.Add(new ObjectField("cut", MeasureFields.Set, "the panel as it is drawn now"));
    public static readonly ObjectField Corrected = Fields.Add(
        new ObjectField("corrected", MeasureFields.Set, "the corrected panel; null where there is nothing to mend") { OrNull = true });

    /// <summary>Fields of a test.</summary>
    internal static class TestFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField Ratio = Set.Add(new NumberField("ratio", "mean square over that of the noise"));
        public static readonly WholeField Above = Set.Add(new WholeField("above", "freedoms of what is tested"));
        public static readonly WholeField Below = Set.Add(new WholeField("below", "freedoms of the noise"));
        public static readonly NumberField Chance = Set.Add(new NumberField("chance", 0, 1, "that noise alone gives as much"));
        public static readonly FlagField Found = Set.Add(new FlagField("found", "whether the chance is below 0.05"));
    }

    /// <summary>Fields of an amount.</summary>
    internal static class AmountFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField Mm = Set.Add(new NumberField("amountMm"));
        public static readonly NumberField SpreadMm = Set.Add(new NumberField("spreadMm", "standard uncertainty"));
        public static readonly NumberField IntervalMm = Set.Add(
            new NumberField("intervalMm", "half of the interval that holds the true amount in 95 of 100 trials"));
    }

    /// <summary>Fields of <c>parts[]</c>.</summary>
    internal static class PartFields
    {
        internal static readonly FieldSet Set = new(AmountFields.Set);

        public static readonly WholeField Order = Set.Add(new WholeField("order", "k of cos ks or sin ks"));
        public static readonly FlagField Sine = Set.Add(new FlagField("sine", "whether it is the sine"));
    }

    /// <summary>Fields of <c>balls[]</c>.</summary>
    internal static class BallFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Ball = Set.Add(new TextField("ball", "name or number of the ball"));
        public static readonly WholeField Readings = Set.Add(new WholeField("readings", "places read"));
        public static readonly ObjectField Along = Set.Add(
            new ObjectField("along", AmountFields.Set, "move of panel A against panel B along A, towards place 5"));
        public static readonly ObjectField Across = Set.Add(new ObjectField("across", AmountFields.Set, "across A, towards place 9"));
        public static readonly ObjectField Turn = Set.Add(
            new ObjectField("turn", AmountFields.Set, "turn of A about its pole, counter-clockwise from outside: the move at its tips"));
        public static readonly ObjectField Unlike = Set.Add(
            new ObjectField("unlike", AmountFields.Set, "wave of the gap, widest at the waists of A: unlike panels or unequal pull"));
        public static readonly NumberField LeftRmsMm = Set.Add(new NumberField("leftRmsMm", "rms of what is left of its readings"));
    }

    /// <summary>Fields of <c>places[]</c>.</summary>
    internal static class PlaceFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Number = Set.Add(new WholeField("place", 1, TrialPlaces.Count, "number on the record sheet"));
        public static readonly NumberField S = Set.Add(new NumberField("s", "seam parameter on panel A") { Unit = "radians" });
        public static readonly WholeField Readings = Set.Add(new WholeField("readings", "readings made there"));
        public static readonly NumberField ReadMm =
            Set.Add(new NumberField("readMm", "mean gap read; null where none was") { OrNull = true });
        public static readonly NumberField FittedMm = Set.Add(new NumberField("fittedMm", "gap that the panels give there, placed true"));
        public static readonly NumberField FittedIntervalMm = Set.Add(new NumberField("fittedIntervalMm", "its 95 % interval, half"));
        public static readonly NumberField CorrectionMm = Set.Add(
            new NumberField(
                "correctionMm", "move of the edge of the panel whose parameter is s, outwards; 0 where there is nothing to mend"));
        public static readonly NumberField CorrectionIntervalMm = Set.Add(
            new NumberField("correctionIntervalMm", "its 95 % interval, half"));
        public static readonly NumberField LeftMm = Set.Add(
            new NumberField("leftMm", "mean gap expected of the corrected panel, placed as on these balls; null likewise")
            {
                OrNull = true,
            });
    }

    /// <summary>Fields of <c>cut</c> and <c>corrected</c>.</summary>
    internal static class MeasureFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField LengthMm = Set.Add(new NumberField("lengthMm"));
        public static readonly NumberField WidthMm = Set.Add(new NumberField("widthMm"));
        public static readonly NumberField WaistMm = Set.Add(new NumberField("waistMm"));
        public static readonly NumberField AreaMm2 = Set.Add(new NumberField("areaMm2"));
    }
}
