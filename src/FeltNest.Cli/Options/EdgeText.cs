using System.CommandLine.Parsing;
using FeltNest.Layout.Limits;

namespace FeltNest.Cli.Options;

/// <summary>Edge trims as they are typed: one length for both sides, or the lower and the upper one with a comma between.</summary>
internal static class EdgeText
{
    /// <summary>Parser of <c>--edge</c>.</summary>
    public static EdgeTrims Parse(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        string[] sides = text.Split(',');
        double?[] lengths = [.. sides.Select(LengthText.Read)];
        if (sides.Length > 2 || Array.Exists(lengths, l => l is not { } length || !(length == 0 || LengthText.IsSound(length))))
        {
            result.AddError(
                $"--edge: '{text}' is not allowed: one length for both sides (15), or lower and upper (12,20), each 0 or "
                    + $"{LengthText.Allowed}; the decimal mark is the point");
            return default;
        }

        return new EdgeTrims { LowerMm = lengths[0]!.Value, UpperMm = lengths[^1]!.Value };
    }
}
