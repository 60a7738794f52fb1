using FeltNest.Layout;
using NetTopologySuite.Geometries;

namespace FeltNest.Rolls.Check;

/// <summary>How near a struck panel is to what would make it a loss: the ends, the usable width, splices and faults of the roll.</summary>
internal sealed class PanelRoom
{
    private const double Slack = 1e-4;
    private static readonly GeometryFactory Factory = new();

    private readonly RollLayout layout;
    private readonly FeltRoll roll;
    private readonly NetTopologySuite.Geometries.Geometry[] faults;

    public PanelRoom(RollLayout layout, FeltRoll roll)
    {
        (this.layout, this.roll) = (layout, roll);
        faults = [.. roll.Faults.Select(FaultShape)];
    }

    /// <summary>How much room a panel has to whatever would make it a loss, mm; below 0 where it is one.</summary>
    public double Of(Polygon panel)
    {
        Envelope box = panel.EnvelopeInternal;
        double top = box.MaxY + layout.Trims.UpperMm;
        double room = Math.Min(roll.LengthMm - box.MaxX, box.MinY - layout.Trims.LowerMm);

        // The least width over the span stands at one of its ends or at a reading between them.
        double[] places = [box.MinX, box.MaxX, .. roll.Widths.Select(w => w.XMm).Where(at => at > box.MinX && at < box.MaxX)];
        room = Math.Min(room, places.Min(Width) - top);
        foreach ((double low, double high) in layout.Rules.Forbidden.Select(f => (f.YFromMm, f.YToMm)))
        {
            room = Math.Min(room, Math.Max(box.MinY - high, low - box.MaxY));
        }

        // An exact edge of the layout stands exactly on the trim: that is inside.
        room += 2 * Slack;
        foreach (double splice in roll.Splices.Select(s => s.XMm))
        {
            room = Math.Min(room, Math.Max(splice - box.MaxX, box.MinX - splice));
        }

        for (int i = 0; i < faults.Length && room > -Slack; i++)
        {
            Envelope near = faults[i].EnvelopeInternal.Copy();
            near.ExpandBy((roll.Faults[i].RadiusMm ?? 0) + 1);
            if (near.Intersects(box))
            {
                // A fault that reaches deeper than the slack is a loss beyond doubt: shrunk by it, the panel still meets the fault.
                double distance = faults[i].Distance(panel) - (roll.Faults[i].RadiusMm ?? 0);
                bool deep =
                    distance <= 0 && (distance < -Slack || panel.Buffer(-Slack).Distance(faults[i]) <= (roll.Faults[i].RadiusMm ?? 0));
                room = Math.Min(room, deep ? -2 * Slack : distance);
            }
        }

        return room;
    }

    private double Width(double x)
    {
        WidthReading before = roll.Widths.LastOrDefault(w => w.XMm <= x, roll.Widths[0]);
        WidthReading after = roll.Widths.FirstOrDefault(w => w.XMm >= x, roll.Widths[^1]);
        return after.XMm <= before.XMm
            ? before.WidthMm
            : before.WidthMm + ((x - before.XMm) / (after.XMm - before.XMm) * (after.WidthMm - before.WidthMm));
    }

    private static NetTopologySuite.Geometries.Geometry FaultShape(RollFault fault) => fault.RadiusMm is not null
        ? Factory.CreatePoint(new Coordinate(fault.MiddleX, fault.MiddleY))
        : Factory.ToGeometry(new Envelope(fault.XMm, fault.XMm + fault.LengthMm, fault.YMm, fault.YMm + fault.WidthMm));
}
