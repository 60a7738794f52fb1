using FeltNest.Ball.Passport;
using FeltNest.Ball.Ranges;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Felts;

/// <summary>The felt of one lot as measured: every field of <c>feltnest/felt/1</c>.</summary>
internal static class FeltDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.Felt, Title = "Felt of one lot, measured", Fields = Fields };

    public static readonly TextField Name = Fields.Add(new TextField("name", "of the felt"));
    public static readonly ObjectField Lot = Fields.Add(new ObjectField("lot", LotFields.Set, "the lot and how it was read"));
    public static readonly ObjectField Values = Fields.Add(
        new ObjectField("values", ValuesFields.Set, "figures that a ball takes; those not measured are left out"));
    public static readonly ObjectsField Curves = Fields.Add(
        new ObjectsField("curves", CurveFields.Set, "laws of the strips, N = c + E e and N = c + E e (1 + b e), N in N/mm"));
    public static readonly NumberField ShearGain = Fields.Add(
        new NumberField("shearGain", "error of the shear modulus for an error of one in the bias modulus; null without a shear modulus")
        {
            OrNull = true,
        });
    public static readonly ObjectField Edge = Fields.Add(
        new ObjectField("edge", EdgeFields.Set, "the bracket of the edge limit; null where no disc was pressed") { OrNull = true });
    public static readonly TextsField Remarks = Fields.Add(new TextsField("remarks", "what has to be told, one sentence each"));

    /// <summary>Fields of <c>values</c>: named as the ball's felt names them.</summary>
    internal static class ValuesFields
    {
        internal static readonly FieldSet Set = new();

        private static readonly Dictionary<FeltQuantity, ObjectField> ByQuantity =
            Enum.GetValues<FeltQuantity>().ToDictionary(quantity => quantity, Added);

        /// <summary>The field of a figure.</summary>
        public static ObjectField Of(FeltQuantity quantity) => ByQuantity[quantity];

        /// <summary>The number inside it.</summary>
        public static NumberField ValueOf(FeltQuantity quantity) => Of(quantity).Fields.NumberOf("value");

        private static ObjectField Added(FeltQuantity quantity)
        {
            FieldRange range = FeltValues.RangeOf(quantity);
            FieldSet figure = new();
            figure.Add(new NumberField("value", range) { Unit = range.Unit });
            return Set.Add(new ObjectField(PassportWords.NameOf(quantity), new FieldSet(figure, FigureFields.Set)) { Optional = true });
        }
    }

    /// <summary>Spread of a figure.</summary>
    internal static class FigureFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField SpecimenSpread = Set.Add(
            new NumberField("specimenSpread", 0, NumberField.NoMost, "standard deviation from specimen to specimen; null where it follows")
            {
                OrNull = true,
            });
        public static readonly NumberField Spread = Set.Add(
            new NumberField("spread", 0, NumberField.NoMost, "standard uncertainty; null for a bracket") { OrNull = true });
        public static readonly NumberField Interval = Set.Add(
            new NumberField("interval", 0, NumberField.NoMost, "half of the interval that holds 95 of 100 true figures; null for a bracket")
            {
                OrNull = true,
            });
        public static readonly NumberField Freedom = Set.Add(
            new NumberField("freedom", 0, NumberField.NoMost, "freedoms of the spread; null for a bracket") { OrNull = true });
        public static readonly WholeField Specimens = Set.Add(new WholeField("specimens", "it was taken from"));
    }

    /// <summary>A figure of a curve.</summary>
    internal static class CurveFigureFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField Value = Set.Add(new NumberField("value"));

        internal static readonly FieldSet All = new(Set, FigureFields.Set);
    }

    /// <summary>Fields of <c>curves[]</c>.</summary>
    internal static class CurveFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly EnumField<FeltDirection> Direction = Set.Add(new EnumField<FeltDirection>("direction", "of the strips"));
        public static readonly FlagField InTension =
            Set.Add(new FlagField("inTension", "whether they were in tension; else in compression"));
        public static readonly WholeField Points = Set.Add(new WholeField("points", "places fitted"));
        public static readonly ObjectField Straight = Set.Add(
            new ObjectField("straightNPerMm", CurveFigureFields.All, "modulus E of the straight law, N/mm"));
        public static readonly NumberField StraightRmsNPerMm = Set.Add(
            new NumberField("straightRmsNPerMm", "what the straight law leaves, root mean square"));
        public static readonly ObjectField Initial = Set.Add(
            new ObjectField("initialNPerMm", CurveFigureFields.All, "modulus E of the bent law at strain 0, N/mm"));
        public static readonly ObjectField Bend = Set.Add(
            new ObjectField("bend", CurveFigureFields.All, "b of the bent law; the law of panels has 1.5"));
        public static readonly NumberField BentRmsNPerMm = Set.Add(
            new NumberField("bentRmsNPerMm", "what a bent law with one bend for all strips leaves, root mean square"));
        public static readonly NumberField Ratio = Set.Add(new NumberField("ratio", "F of the bend, one freedom above"));
        public static readonly WholeField Freedom = Set.Add(new WholeField("freedom", "freedoms below"));
        public static readonly NumberField Chance = Set.Add(new NumberField("chance", 0, 1, "that noise alone gives as much"));
        public static readonly FlagField Bends = Set.Add(
            new FlagField("bends", "whether the chance is below 0.05 and the interval of b leaves out 0"));
    }

    /// <summary>Fields of <c>edge</c>.</summary>
    internal static class EdgeFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField FlatDiscMm = Set.Add(
            new NumberField("flatDiscMm", "diameter of the greatest disc that lay flat below all that puckered"));
        public static readonly NumberField FlatRadiusMm = Set.Add(new NumberField("flatRadiusMm", "of its neutral layer on the core"));
        public static readonly NumberField FlatPercent = Set.Add(
            new NumberField("flatPercent", "compression of its edge: the limit that a ball takes"));
        public static readonly NumberField PuckeredDiscMm = Set.Add(
            new NumberField("puckeredDiscMm", "diameter of the least disc that puckered beyond all flat ones; null where none did")
            {
                OrNull = true,
            });
        public static readonly NumberField PuckeredRadiusMm = Set.Add(
            new NumberField("puckeredRadiusMm", "of its neutral layer on the core; null likewise") { OrNull = true });
        public static readonly NumberField PuckeredPercent = Set.Add(
            new NumberField("puckeredPercent", "compression of its edge: the upper end of the bracket; null likewise") { OrNull = true });
        public static readonly WholeField FlatDiscs = Set.Add(new WholeField("flatDiscs", "discs of that size that lay flat"));
        public static readonly NumberField PuckerShareAtMostPercent = Set.Add(
            new NumberField(
                "puckerShareAtMostPercent", "share of such discs that may still pucker, with 95 in 100 certainty: 1 - 0.05^(1/flatDiscs)"));
        public static readonly FlagField Contradict = Set.Add(
            new FlagField("contradict", "whether a disc lay flat at more compression than another puckered at"));
    }
}
