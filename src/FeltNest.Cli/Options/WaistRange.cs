using System.CommandLine.Parsing;
using FeltNest.Design;

namespace FeltNest.Cli.Options;

/// <summary>Waists as they are typed: FROM:TO:STEP, each a length.</summary>
internal static class WaistRange
{
    /// <summary>Parser of the option.</summary>
    public static IReadOnlyList<double>? Parse(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        double?[] parts = [.. text.Split(':').Select(LengthText.Read)];
        if (parts is not [{ } from, { } to, { } step] || !(from > 0) || !(step > 0))
        {
            result.AddError($"--waist-range: '{text}' is not allowed: FROM:TO:STEP in mm or with units, such as 20:32:1");
            return null;
        }

        try
        {
            return WaistStudy.Range(from, to, step);
        }
        catch (InputException error)
        {
            result.AddError(OptionNames.LineOf(error));
            return null;
        }
    }
}
