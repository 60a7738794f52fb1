using System.Globalization;
using System.Text.Json;
using FeltNest.Ball.Ranges;
using FeltNest.Files.Json;
using FeltNest.Rolls;

namespace FeltNest.Files.Rolls;

/// <summary>Reads a roll (schema feltnest/roll/1).</summary>
public static class RollReader
{
    /// <summary>Longest roll, mm.</summary>
    internal const double MostLengthMm = 100_000;

    // Most faults and readings of a roll: one every few millimetres is no roll any more.
    private const int MostItems = 10_000;

    // Faults this little outside the felt are at its edge, mm: rounding of metres and millimetres.
    private const double Slack = 1e-6;

    /// <summary>The roll of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static FeltRoll Read(string path) => Read(path, JsonInput.ReadObject(path));

    /// <summary>The roll of a JSON object already read from a file.</summary>
    internal static FeltRoll Read(string path, JsonElement root)
    {
        JsonInput.SchemaOf(root, path, SchemaName.Roll);
        JsonFields top = JsonFields.Top(
            path, root, "schema", "name", "felt", "lot", "lengthM", "widths", "joints", "skewDeg", "napToward", "massPerAreaGsm", "faults");
        try
        {
            FeltRoll bare = new(
                top.Text("name"), Optional(top, "felt"), Optional(top, "lot"),
                1000 * Range("lengthM", 0.1, MostLengthMm / 1000, "m", "sound lengths run to 100 m").Checked(top.Number("lengthM")),
                [], [],
                Range("skewDeg", -30, 30, "degrees", "a warp further off the selvedge is another angle of laying")
                    .Checked(top.OptionalNumber("skewDeg") ?? 0), Nap(top),
                top.OptionalNumber("massPerAreaGsm") is { } mass
                    ? Range("massPerAreaGsm", 50, 3000, "g/m2", "felt lies well inside").Checked(mass)
                    : null, []);
            FeltRoll measured = bare with { Widths = Widths(top, bare.LengthMm), JointsMm = Joints(top, bare.LengthMm) };
            return measured with { Faults = Faults(top, measured) };
        }
        catch (InputException error)
        {
            throw error.File is null ? error.InFile(path) : error;
        }
    }

    private static string? Optional(JsonFields fields, string name) => fields.Has(name) ? fields.Text(name) : null;

    private static NapDirection? Nap(JsonFields top)
    {
        string? word = Optional(top, "napToward");
        return word is null ? null : NapWord.Find(word) ?? throw top.Fault("napToward", $"'{word}' is not known; allowed: +x, -x");
    }

    private static List<WidthReading> Widths(JsonFields top, double length)
    {
        List<WidthReading> widths = [];
        foreach (JsonFields item in top.ObjectsUpTo(MostItems, "widths", "xM", "widthMm"))
        {
            WidthReading reading = new(
                1000 * Range(item.PathOf("xM"), 0, length / 1000, "m", "the roll's length").Checked(item.Number("xM")),
                Range(item.PathOf("widthMm"), 1, 10_000, "mm", "looms end well before").Checked(item.Number("widthMm")));
            if (widths.Count > 0 && reading.XMm <= widths[^1].XMm)
            {
                throw item.Fault(
                    "xM",
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{reading.XMm / 1000} m does not lie beyond the reading before it at {widths[^1].XMm / 1000} m: readings go in "
                            + $"order of x"));
            }

            widths.Add(reading);
        }

        return widths.Count > 0 ? widths : throw top.Fault("widths", "is empty: at least one reading is wanted");
    }

    private static List<double> Joints(JsonFields top, double length)
    {
        List<double> joints = [];
        foreach (JsonFields item in top.Has("joints") ? top.ObjectsUpTo(MostItems, "joints", "xM") : [])
        {
            double at = 1000 * item.Number("xM");
            if (!(at > 0 && at < length))
            {
                throw item.Fault(
                    "xM",
                    FormattableString.Invariant($"{at / 1000} m is not inside the roll: above 0 and below {length / 1000} m is allowed"));
            }

            if (joints.Count > 0 && at <= joints[^1])
            {
                throw item.Fault(
                    "xM",
                    FormattableString.Invariant(
                        $"{at / 1000} m does not lie beyond the joint before it at {joints[^1] / 1000} m: joints go in order of x"));
            }

            joints.Add(at);
        }

        return joints;
    }

    private static List<RollFault> Faults(JsonFields top, FeltRoll roll)
    {
        List<RollFault> faults = [];
        foreach (JsonFields item in top.Has("faults")
            ? top.ObjectsUpTo(MostItems, "faults", "xMm", "yMm", "radiusMm", "lengthMm", "widthMm")
            : [])
        {
            double x = item.Number("xMm");
            double y = item.Number("yMm");
            bool disc = item.Has("radiusMm");
            if (disc == (item.Has("lengthMm") || item.Has("widthMm")))
            {
                throw item.Fault(disc ? "radiusMm" : "lengthMm", "give either 'radiusMm', or 'lengthMm' and 'widthMm'");
            }

            RollFault fault =
                disc ? RollFault.Disc(x, y, Size(item, "radiusMm")) : RollFault.Box(x, y, Size(item, "lengthMm"), Size(item, "widthMm"));
            double width = Math.Max(roll.WidthAt(fault.XMm), roll.WidthAt(fault.XMm + fault.LengthMm));

            // A fault may run into the selvedge; its middle lies on the cloth. A box lies on it wholly along the roll.
            (double first, double last) = disc ? (x, x) : (x, x + fault.LengthMm);
            if (!(first >= -Slack && last <= roll.LengthMm + Slack))
            {
                throw item.Fault(
                    "xMm",
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"the fault runs from {first:0.###} to {last:0.###} mm: allowed are 0 to {roll.LengthMm:0.###} mm, the length "
                            + $"of the roll"));
            }

            if (!(fault.MiddleY >= -Slack && fault.MiddleY <= width + Slack && y >= -Slack))
            {
                throw item.Fault(
                    "yMm",
                    FormattableString.Invariant(
                        $"{y:0.###} mm puts the fault outside the felt, which is {width:0.###} mm wide there: its middle must lie on it"));
            }

            faults.Add(fault);
        }

        return faults;
    }

    private static double Size(JsonFields item, string name) =>
        Range(item.PathOf(name), 0, MostLengthMm, "mm", "sound lengths run to 100 m").Checked(item.Number(name));

    private static FieldRange Range(string field, double low, double high, string unit, string reason) =>
        new(field, low, high, unit, reason);
}
