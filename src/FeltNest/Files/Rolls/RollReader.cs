using System.Globalization;
using System.Text.Json;
using FeltNest.Files.Json;
using FeltNest.Rolls;
using static FeltNest.Files.Rolls.RollDocument;

namespace FeltNest.Files.Rolls;

/// <summary>Reads a roll (schema feltnest/roll/1).</summary>
internal static class RollReader
{
    // Faults this little outside the felt are at its edge, mm: rounding of metres and millimetres.
    private const double Slack = 1e-6;

    /// <summary>The roll of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static FeltRoll Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The roll of a text.</summary>
    /// <exception cref="InputException">Names the text, the field, the value found and what is allowed.</exception>
    public static FeltRoll Read(InputText text) => Read(text.Name, JsonInput.ReadObject(text));

    /// <summary>The roll of a JSON object already read from a file.</summary>
    internal static FeltRoll Read(string path, JsonElement root)
    {
        JsonFields top = JsonFields.Top(path, root, RollDocument.Document);
        NapDirection? nap = top.OptionalText(NapToward) is null ? null : NapWord.Find(top.Word(NapToward));
        FeltRoll bare = new()
        {
            Name = top.Text(Name),
            Felt = top.OptionalText(Felt),
            Lot = top.OptionalText(Lot),
            LengthMm = 1000 * top.Number(LengthM),
            Widths = [],
            Splices = [],
            SkewDeg = top.Number(SkewDeg),
            Nap = nap,
            MassPerAreaGsm = top.OptionalNumber(MassPerAreaGsm),
            Faults = [],
        };
        FeltRoll measured = bare with { Widths = WidthsOf(top, bare.LengthMm), Splices = SplicesOf(top, bare.LengthMm) };
        return measured with { Faults = FaultsOf(top, measured) };
    }

    private static List<WidthReading> WidthsOf(JsonFields top, double length)
    {
        List<WidthReading> widths = [];
        foreach (JsonFields item in top.Objects(Widths))
        {
            WidthReading reading = new() { XMm = 1000 * Along(item, length), WidthMm = item.Number(WidthFields.WidthMm) };
            if (widths.Count > 0 && reading.XMm <= widths[^1].XMm)
            {
                throw item.Fault(
                    WidthFields.XM,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{reading.XMm / 1000} m does not lie beyond the reading before it at {widths[^1].XMm / 1000} m: readings go in "
                            + $"order of x"));
            }

            widths.Add(reading);
        }

        return widths.Count > 0 ? widths : throw top.Fault(Widths, "is empty: at least one reading is wanted");
    }

    private static List<RollSplice> SplicesOf(JsonFields top, double length)
    {
        List<RollSplice> splices = [];
        foreach (JsonFields item in top.OptionalObjects(Joints))
        {
            double at = 1000 * item.Number(JointFields.XM);
            if (!(at > 0 && at < length))
            {
                throw item.Fault(
                    JointFields.XM,
                    FormattableString.Invariant($"{at / 1000} m is not inside the roll: above 0 and below {length / 1000} m is allowed"));
            }

            if (splices.Count > 0 && at <= splices[^1].XMm)
            {
                throw item.Fault(
                    JointFields.XM,
                    FormattableString.Invariant(
                        $"{at / 1000} m does not lie beyond the splice before it at {splices[^1].XMm / 1000} m: splices go in order of x"));
            }

            splices.Add(new RollSplice { XMm = at, ClearMm = item.Number(JointFields.ClearMm) });
        }

        return splices;
    }

    // Long because it reads the fields of a fault in their order and tells each fault where it is met.
    private static List<RollFault> FaultsOf(JsonFields top, FeltRoll roll)
    {
        List<RollFault> faults = [];
        foreach (JsonFields item in top.OptionalObjects(Faults))
        {
            double x = item.Number(FaultFields.XMm);
            double y = item.Number(FaultFields.YMm);
            bool disc = item.Has(FaultFields.RadiusMm);
            if (disc == (item.Has(FaultFields.LengthMm) || item.Has(FaultFields.WidthMm)))
            {
                throw item.Fault(disc ? FaultFields.RadiusMm : FaultFields.LengthMm, "give either 'radiusMm', or 'lengthMm' and 'widthMm'");
            }

            RollFault fault = disc
                ? RollFault.Disc(x, y, item.Number(FaultFields.RadiusMm))
                : RollFault.Box(x, y, item.Number(FaultFields.LengthMm), item.Number(FaultFields.WidthMm));
            double width = Math.Max(roll.WidthAt(fault.XMm), roll.WidthAt(fault.XMm + fault.LengthMm));

            // A fault may run into the selvedge; its middle lies on the cloth. A box lies on it wholly along the roll.
            (double first, double last) = disc ? (x, x) : (x, x + fault.LengthMm);
            if (!(first >= -Slack && last <= roll.LengthMm + Slack))
            {
                throw item.Fault(
                    FaultFields.XMm,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"the fault runs from {first:0.###} to {last:0.###} mm: allowed are 0 to {roll.LengthMm:0.###} mm, the length "
                            + $"of the roll"));
            }

            if (!(fault.MiddleY >= -Slack && fault.MiddleY <= width + Slack && y >= -Slack))
            {
                throw item.Fault(
                    FaultFields.YMm,
                    FormattableString.Invariant(
                        $"{y:0.###} mm puts the fault outside the felt, which is {width:0.###} mm wide there: its middle must lie on it"));
            }

            faults.Add(fault);
        }

        return faults;
    }

    private static double Along(JsonFields item, double lengthMm)
    {
        double at = item.Number(WidthFields.XM);
        return at >= 0 && at <= lengthMm / 1000
            ? at
            : throw item.Fault(
                WidthFields.XM, FormattableString.Invariant($"{at:R} m is outside 0 to {lengthMm / 1000:R} m: the roll's length"));
    }
}
