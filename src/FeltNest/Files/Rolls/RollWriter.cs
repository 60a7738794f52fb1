using FeltNest.Files.Json;
using FeltNest.Rolls;

namespace FeltNest.Files.Rolls;

/// <summary>Writes a roll as the reader takes it (schema feltnest/roll/1).</summary>
public static class RollWriter
{
    /// <summary>The bytes.</summary>
    public static byte[] Write(FeltRoll roll)
    {
        using JsonOutput json = new();
        json.Text("schema", SchemaName.Roll)
            .Text("name", roll.Name)
            .Text("felt", roll.Felt)
            .Text("lot", roll.Lot)
            .Number("lengthM", roll.LengthMm / 1000)
            .Objects("widths", roll.Widths, (item, reading) => item.Number("xM", reading.XMm / 1000).Number("widthMm", reading.WidthMm))
            .Objects("joints", roll.JointsMm, (item, joint) => item.Number("xM", joint / 1000))
            .Number("skewDeg", roll.SkewDeg)
            .Number("massPerAreaGsm", roll.MassPerAreaGsm)
            .Objects("faults", roll.Faults, WriteFault);
        if (roll.Nap is { } nap)
        {
            json.Text("napToward", NapWord.Of(nap));
        }

        return json.Finish();
    }

    private static void WriteFault(JsonOutput item, RollFault fault)
    {
        if (fault.RadiusMm is { } radius)
        {
            item.Number("xMm", fault.MiddleX).Number("yMm", fault.MiddleY).Number("radiusMm", radius);
        }
        else
        {
            item.Number("xMm", fault.XMm).Number("yMm", fault.YMm).Number("lengthMm", fault.LengthMm).Number("widthMm", fault.WidthMm);
        }
    }
}
