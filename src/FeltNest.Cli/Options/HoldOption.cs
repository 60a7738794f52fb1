using System.CommandLine;
using System.CommandLine.Parsing;
using FeltNest.Ball;
using FeltNest.Ball.Ranges;
using FeltNest.Panel.Proven;

namespace FeltNest.Cli.Options;

/// <summary>Values of the ball that are known when it is fitted to a panel.</summary>
internal sealed class HoldOption
{
    private const string Waist = "waist";
    private const string NeutralLayer = "neutral-layer";
    private const string EdgeLimit = "edge-limit";

    private readonly Option<IReadOnlyDictionary<string, double>> hold = new("--hold")
    {
        Description = $"With --proven: a value that is known and not sought, {Waist} in mm, {NeutralLayer} or {EdgeLimit} in %; may be "
            + "given again.",
        HelpName = "name=value",
        CustomParser = Parse,
        AllowMultipleArgumentsPerToken = false,
        Arity = ArgumentArity.OneOrMore,
    };

    /// <summary>Adds the option to a command.</summary>
    public HoldOption(Command command) => command.Add(hold);

    /// <summary>Its name.</summary>
    public string Name => hold.Name;

    /// <summary>Whether anything is held.</summary>
    public bool IsGiven(ParseResult parse) => Values(parse).Count > 0;

    /// <summary>What is held.</summary>
    public ProvenHold Of(ParseResult parse)
    {
        IReadOnlyDictionary<string, double> values = Values(parse);
        return new ProvenHold
        {
            Waist = values.ContainsKey(Waist),
            NeutralLayer = values.ContainsKey(NeutralLayer),
            EdgeLimit = values.ContainsKey(EdgeLimit),
        };
    }

    /// <summary>The ball with the values held.</summary>
    /// <exception cref="InputException">A value outside its range.</exception>
    public BallSpec Applied(ParseResult parse, BallSpec ball)
    {
        IReadOnlyDictionary<string, double> values = Values(parse);
        BallSpec with = ball with
        {
            Felt = ball.Felt with
            {
                NeutralLayer = Sound(values, NeutralLayer, BallRanges.NeutralLayer) ?? ball.Felt.NeutralLayer,
                MaxEdgeCompressionPercent =
                    Sound(values, EdgeLimit, BallRanges.MaxEdgeCompression) ?? ball.Felt.MaxEdgeCompressionPercent,
            },
        };
        double? waist = Sound(values, Waist, BallRanges.WaistOn(with.FittedRadiusMm));
        return waist is { } length ? with with { Seam = with.Seam with { WaistMm = length } } : with;
    }

    private static double? Sound(IReadOnlyDictionary<string, double> values, string name, FieldRange range)
    {
        if (!values.TryGetValue(name, out double value))
        {
            return null;
        }

        return value >= range.Low && value <= range.High
            ? value
            : throw new InputException(
                AskedFor.HeldValues, FormattableString.Invariant($"{name}={value} is outside {range.Low:0.##} to {range.High:0.##}"));
    }

    private IReadOnlyDictionary<string, double> Values(ParseResult parse) => parse.GetValue(hold) ?? new Dictionary<string, double>();

    private static Dictionary<string, double> Parse(ArgumentResult result)
    {
        Dictionary<string, double> values = [];
        foreach (Token token in result.Tokens)
        {
            string[] parts = token.Value.Split('=', 2);
            double? value = parts.Length == 2 ? LengthText.Read(parts[1]) : null;
            if (parts[0] is not (Waist or NeutralLayer or EdgeLimit) || value is null)
            {
                result.AddError($"--hold: '{token.Value}' is not allowed: {Waist}=28, {NeutralLayer}=0.5 or {EdgeLimit}=12");
                return [];
            }

            values[parts[0]] = value.Value;
        }

        return values;
    }
}
