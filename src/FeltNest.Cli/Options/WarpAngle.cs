using System.CommandLine.Parsing;
using System.Globalization;

namespace FeltNest.Cli.Options;

/// <summary>What was asked about the angle to the warp.</summary>
/// <param name="Design">The part's own design angle.</param>
/// <param name="Degrees">A given angle, or null.</param>
/// <param name="Joint">The angle is to be found together with the panel.</param>
internal readonly record struct WarpAngle(bool Design, double? Degrees, bool Joint = false)
{
    /// <summary>Parser of <c>design</c>, <c>free</c>, <c>joint</c> or a number of degrees.</summary>
    public static WarpAngle? Parse(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        switch (text)
        {
            case "design":
                return new WarpAngle(true, null);
            case "free":
                return new WarpAngle(false, null);
            case "joint":
                return new WarpAngle(true, null, Joint: true);
        }

        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double degrees) && degrees is >= -360 and <= 360)
        {
            return new WarpAngle(false, degrees);
        }

        result.AddError($"--warp-angle: '{text}' is not allowed: design, free, joint, or degrees from -360 to 360");
        return null;
    }
}
