using FeltNest.Files.Json;
using FeltNest.Rolls;
using static FeltNest.Files.Rolls.RollDocument;

namespace FeltNest.Files.Rolls;

/// <summary>Writes a roll as the reader takes it (schema feltnest/roll/1).</summary>
internal static class RollWriter
{
    /// <summary>The bytes.</summary>
    public static byte[] Write(FeltRoll roll)
    {
        using JsonOutput json = new(RollDocument.Document);
        json.Text(RollDocument.Name, roll.Name)
            .Text(RollDocument.Felt, roll.Felt)
            .Text(RollDocument.Lot, roll.Lot)
            .Number(RollDocument.LengthM, roll.LengthMm / 1000)
            .Objects(
                RollDocument.Widths, roll.Widths,
                (item, reading) => item.Number(WidthFields.XM, reading.XMm / 1000).Number(WidthFields.WidthMm, reading.WidthMm))
            .Objects(RollDocument.Joints, roll.Splices, WriteSplice)
            .Number(RollDocument.SkewDeg, roll.SkewDeg)
            .Number(RollDocument.MassPerAreaGsm, roll.MassPerAreaGsm)
            .Objects(RollDocument.Faults, roll.Faults, WriteFault);
        if (roll.Nap is { } nap)
        {
            json.Text(RollDocument.NapToward, NapWord.Of(nap));
        }

        return json.Finish();
    }

    private static void WriteSplice(JsonOutput item, RollSplice splice)
    {
        item.Number(JointFields.XM, splice.XMm / 1000);
        if (splice.ClearMm > 0)
        {
            item.Number(JointFields.ClearMm, splice.ClearMm);
        }
    }

    private static void WriteFault(JsonOutput item, RollFault fault)
    {
        if (fault.RadiusMm is { } radius)
        {
            item.Number(FaultFields.XMm, fault.MiddleX).Number(FaultFields.YMm, fault.MiddleY).Number(FaultFields.RadiusMm, radius);
        }
        else
        {
            item
                .Number(FaultFields.XMm, fault.XMm)
                .Number(FaultFields.YMm, fault.YMm)
                .Number(FaultFields.LengthMm, fault.LengthMm)
                .Number(FaultFields.WidthMm, fault.WidthMm);
        }
    }
}
