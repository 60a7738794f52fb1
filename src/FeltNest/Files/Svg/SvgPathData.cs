using FeltNest.Geometry;

namespace FeltNest.Files.Svg;

/// <summary>Draws the data of an SVG path: all commands, absolute and relative, repeated arguments, flags written together.</summary>
/// <remarks>Follows W3C, <i>Scalable Vector Graphics (SVG) 2</i>, chapter 9 and appendix B.2 (arcs). An error anywhere refuses the whole
/// path.</remarks>
internal sealed class SvgPathData
{
    private readonly SvgCursor text;
    private readonly SvgPen pen;
    private Point2 at;
    private Point2 start;
    private Point2 handle;
    private char last = 'M';
    private bool begun;
    private bool moved;

    private SvgPathData(SvgCursor text, SvgPen pen)
    {
        this.text = text;
        this.pen = pen;
    }

    /// <summary>Draws one path.</summary>
    /// <exception cref="InputException">Names the character that cannot be read.</exception>
    public static void Draw(SvgCursor text, SvgPen pen) => new SvgPathData(text, pen).Draw();

    private void Draw()
    {
        while (!text.AtEnd)
        {
            int place = text.At;
            char command = text.Character();
            if (!"MmZzLlHhVvCcSsQqTtAa".Contains(command, StringComparison.Ordinal))
            {
                throw text.Fault(place, $"'{command}' is no path command: M L H V C S Q T A Z, or small letters");
            }

            if (!begun && command is not ('M' or 'm'))
            {
                throw text.Fault(place, $"'{command}' comes first where M is wanted");
            }

            if (command is 'Z' or 'z')
            {
                Close();
                continue;
            }

            do
            {
                Step(command);
                if (pen.Chords > SvgPen.MostChords)
                {
                    throw text.Fault(place, $"draws curves of more than {SvgPen.MostChords} chords: is the scale right?");
                }

                // More pairs after a move are lines.
                command = command switch { 'M' => 'L', 'm' => 'l', _ => command };
            }
            while (text.NumberFollows);
        }
    }

    private void Close()
    {
        if (!moved)
        {
            pen.Close();
        }

        (at, moved, last) = (start, true, 'Z');
    }

    private void Step(char command)
    {
        bool relative = char.IsAsciiLetterLower(command);
        char kind = char.ToUpperInvariant(command);
        Point2 origin = relative ? at : default;
        if (kind == 'M')
        {
            at = origin + Pair();
            (start, begun, moved, last) = (at, true, true, kind);
            return;
        }

        // A run begins with its first piece: a move alone, or one after a close, draws nothing.
        if (moved)
        {
            pen.Move(at);
            (start, moved) = (at, false);
        }

        at = Drawn(kind, origin);
        last = kind;
    }

    // Draws a piece, and says where it ends.
    private Point2 Drawn(char kind, Point2 origin)
    {
        Point2 to;
        switch (kind)
        {
            case 'L':
                pen.Line(to = origin + Pair());
                break;
            case 'H':
                pen.Line(to = new Point2(origin.X + text.Number(), at.Y));
                break;
            case 'V':
                pen.Line(to = new Point2(at.X, origin.Y + text.Number()));
                break;
            case 'C' or 'S':
                Point2 first = kind == 'C' ? origin + Pair() : Mirrored(last is 'C' or 'S');
                handle = origin + Pair();
                pen.Bezier(at, first, handle, to = origin + Pair());
                break;
            case 'Q' or 'T':
                handle = kind == 'Q' ? origin + Pair() : Mirrored(last is 'Q' or 'T');
                pen.Bezier(at, handle, to = origin + Pair());
                break;
            default:
                to = Arc(origin);
                break;
        }

        return to;
    }

    // A smooth curve goes on from the handle before it, where a curve of its kind stands there.
    private Point2 Mirrored(bool follows) => follows ? (at * 2) - handle : at;

    private Point2 Pair() => new(text.Number(), text.Number());

    private Point2 Arc(Point2 origin)
    {
        double rx = Math.Abs(text.Number());
        double ry = Math.Abs(text.Number());
        double tilt = text.Number() * Math.PI / 180;
        bool large = text.Flag();
        bool positive = text.Flag();
        Point2 to = origin + Pair();
        if (to == at)
        {
            return to;
        }

        if (rx == 0 || ry == 0)
        {
            pen.Line(to);
            return to;
        }

        // In the frame of the ellipse, scaled to a circle of radius 1.
        Point2 half = ((at - to) * 0.5).Turned(-tilt);
        double grow = Math.Sqrt((half.X * half.X / (rx * rx)) + (half.Y * half.Y / (ry * ry)));
        (rx, ry) = grow > 1 ? (rx * grow, ry * grow) : (rx, ry);
        Point2 unit = new(half.X / rx, half.Y / ry);
        double height = Math.Sqrt(Math.Max(0, 1 - unit.Dot(unit)));
        double length = unit.Length;
        double side = large == positive ? -1 : 1;
        Point2 middle = length == 0 ? default : new Point2(unit.Y, -unit.X) * (height / length * side);
        Point2 spoke = unit - middle;
        Point2 spokeEnd = (unit * -1) - middle;
        double from = Math.Atan2(spoke.Y, spoke.X);
        double sweep = Wound(Math.Atan2(spokeEnd.Y, spokeEnd.X) - from, positive);
        Point2 centre = new Point2(middle.X * rx, middle.Y * ry).Turned(tilt) + ((at + to) * 0.5);
        pen.Ellipse(centre, new Point2(rx, 0).Turned(tilt), new Point2(0, ry).Turned(tilt), from, sweep, to);
        return to;
    }

    // A turn that goes the way wanted.
    private static double Wound(double turn, bool positive)
    {
        if (positive && turn < 0)
        {
            return turn + (2 * Math.PI);
        }

        return !positive && turn > 0 ? turn - (2 * Math.PI) : turn;
    }
}
