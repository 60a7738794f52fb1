using FeltNest.Files.Outlines;
using FeltNest.Panel.Trace;

namespace FeltNest.Files.Scan;

/// <summary>Reads cut panels from a picture: a flatbed scan of known resolution, or a photo of the sheet of reference marks.</summary>
internal static class ScanReader
{
    /// <summary>What the picture shows.</summary>
    /// <exception cref="InputException">The picture cannot be read, its scale is not known, or no panel can be told.</exception>
    public static TracedPanel Trace(InputText text)
    {
        ColourPicture picture = PictureReader.Read(text);
        try
        {
            return ScanTracer.Trace(Flat(text, picture));
        }
        catch (InputException error) when (error is { File: null, Asked: null })
        {
            throw error.InFile(text.Name);
        }
    }

    /// <summary>The outline with what was found, told in notes.</summary>
    /// <exception cref="InputException">As above.</exception>
    public static ImportedOutline Read(InputText text)
    {
        TracedPanel traced = Trace(text);
        return OutlineReader.Shaped(
            text.Name, null,
            () => ImportedOutline.OfArcs(Path.GetFileNameWithoutExtension(text.Name), traced.Outline.Vertices)) with
        {
            WarpAngleDeg = traced.WarpAngleDeg,
            Notes = [.. Notes(text, traced)],
        };
    }

    /// <summary>What was found, a sentence each.</summary>
    public static IEnumerable<string> Notes(InputText text, TracedPanel traced)
    {
        FoundPanels found = traced.Found;
        string scale = traced.Flat.MarksOffMm is { } off
            ? FormattableString.Invariant($"scale by six reference marks, which lie {off:0.000} mm rms off one flat sheet")
            : FormattableString.Invariant($"scale by {text.Dpi} dpi");
        yield return FormattableString.Invariant($"{scale}; a pixel is {traced.Flat.PixelMm:0.0000} mm, seen from the nap side");
        if (text.Dpi is { } dpi && traced.Flat.Picture.StatedDpi is { } stated && Math.Abs(stated - dpi) > 1)
        {
            yield return FormattableString.Invariant(
                $"the file itself states {stated:0} dpi, {dpi} are taken: measure one length to be sure");
        }

        string aside = found.LeftAside == 0 ? string.Empty : $"; left aside: {found.LeftAside} frames and smaller things";
        string number = found.Panels.Count == 1 ? "1 panel" : $"{found.Panels.Count} panels";
        yield return FormattableString.Invariant(
            $"{number} told from the ground in {found.Seen}, {found.Contrast:0} of 255 apart{aside}");
        if (traced.Spread is { } spread)
        {
            yield return FormattableString.Invariant(
                $"the outline is the mean of {found.Panels.Count} panels, which scatter by {spread.RmsMm:0.000} mm rms and ")
                + FormattableString.Invariant($"{spread.GreatestMm:0.000} mm at most");
        }

        yield return traced.Smoothing is { } smoothing
            ? FormattableString.Invariant($"the edge is smooth, its grain of {smoothing.RmsMm:0.000} mm rms taken out")
            : "the edge has corners or is uneven: it is kept as seen";
        yield return traced.WarpAngleDeg is { } angle
            ? FormattableString.Invariant($"a line of ink tells the warp: {angle:0.0} degrees from it to the picture's x")
                + (traced.Marks!.HasNap ? ", and a dot the nap" : string.Empty)
            : "no single line of ink along the warp is found: the warp angle is not known";
    }

    private static FlatPicture Flat(InputText text, ColourPicture picture)
    {
        if (text.Dpi is { } dpi)
        {
            return FlatPicture.OfScan(picture, dpi);
        }

        string stated = picture.StatedDpi is { } own ? FormattableString.Invariant($" (the file itself states {own:0} dpi)") : string.Empty;
        return FlatPicture.OfSheet(picture) ?? throw new InputException(
            AskedFor.Resolution, $"is needed: {OneLine.Of(text.Name)} does not show the six marks of the reference sheet{stated}");
    }
}
