using System.CommandLine;

namespace FeltNest.Cli.Options;

/// <summary>The resolution of a picture that stands for an outline.</summary>
internal sealed class ScanOption
{
    // Coarser than the first no edge is seen; flatbeds end at the second.
    private const double Least = 50;
    private const double Most = 4800;

    private readonly Option<double?> dpi = new("--dpi")
    {
        Description = "Resolution of a flatbed scan (PNG, JPEG) given as outline, dots per inch; a photo of the sheet of reference marks "
            + "needs none.",
        HelpName = "number",
        CustomParser = result => NumberText.Within(Least, Most, "dpi")(result),
    };

    /// <summary>Adds the option to a command.</summary>
    public ScanOption(Command command) => command.Add(dpi);

    /// <summary>Its name.</summary>
    public string Name => dpi.Name;

    /// <summary>Dots per inch, or null.</summary>
    public double? Of(ParseResult parse) => parse.GetValue(dpi);
}
