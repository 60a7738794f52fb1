using FeltNest.Files;
using FeltNest.Files.Scan;
using FeltNest.Geometry;
using FeltNest.Panel;
using FeltNest.Panel.Trace;
using FeltNest.Panel.Wrap.Solve;
using SkiaSharp;
using Xunit;

namespace FeltNest.Tests.Panel.Trace;

public sealed class ScanTracerTests
{
    private const double Pixel = 25.4 / 200;
    private const double SkewDeg = 1.3;

    private static readonly Lazy<ArcOutline> Truth = new(() => PanelFlattener.Flatten(Balls.Usual()).Arcs);
    private static readonly SKColor Ink = new(25, 25, 35);

    [Fact]
    public void A_scan_at_200_dpi_with_blur_noise_and_skew_gives_the_outline_to_a_twentieth_of_a_millimetre()
    {
        TracedPanel traced = Traced(Flatbed().Of([ScanPicture.Ring(Truth.Value)]), 200);

        Assert.InRange(Rms(Truth.Value, traced.Outline), 0, 0.05);
        Assert.Equal("blue", traced.Found.Seen);
        Assert.Single(traced.Found.Panels);
        Assert.Null(traced.WarpAngleDeg);
    }

    [Fact]
    public void A_photo_tilted_by_12_degrees_with_the_marks_gives_it_to_a_seventh_of_a_millimetre()
    {
        IReadOnlyList<Point2> upright = [.. ScanPicture.Ring(Truth.Value).Select(p => p.Turned(Math.PI / 2))];

        TracedPanel traced = Traced(Photo(12).Of([upright], Marks()), null);

        Assert.InRange(Rms(Truth.Value, traced.Outline), 0, 0.15);
        Assert.InRange(traced.Flat.MarksOffMm!.Value, 0, 0.1);
    }

    [Fact]
    public void Several_panels_are_averaged_and_their_spread_is_told()
    {
        // Three panels, grown by -0.3, 0 and 0.3 mm all round: their mean is the middle one, their spread 0.3.
        IReadOnlyList<Point2>[] panels =
        [
            .. new[] { 0, -0.3, 0.3 }.Select((grown, i) => (IReadOnlyList<Point2>)
                [.. Grown(Truth.Value, grown).Select(p => p.Turned(i * Math.PI * 0.97) + new Point2(4 * i, (82 * i) - 82))]),
        ];

        TracedPanel traced = Traced(Flatbed(260, 275).Of(panels), 200);

        Assert.Equal(3, traced.Found.Panels.Count);
        Assert.InRange(Rms(Truth.Value, traced.Outline), 0, 0.05);
        Assert.Equal(0.3, traced.Spread!.Value.RmsMm, 0.02);
    }

    [Fact]
    public void A_line_of_ink_tells_the_warp_and_a_dot_the_nap()
    {
        // A line of 20 mm at 25 degrees to the panel's axis, the dot beyond its end; the scan's skew comes on top.
        Point2 along = new Point2(1, 0).Turned(25 * Math.PI / 180);
        Point2[] line =
        [
            along * -10 + (along.Left * 0.5), along * -10 - (along.Left * 0.5), along * 10 - (along.Left * 0.5),
            along * 10 + (along.Left * 0.5),
        ];

        TracedPanel traced = Traced(
            Flatbed().Of([ScanPicture.Ring(Truth.Value)], null, [(line, Ink), (ScanPicture.Disc(along * 14, 1.2), Ink)]), 200);

        Assert.Equal(-25 - SkewDeg, traced.WarpAngleDeg!.Value, 0.3);
        Assert.True(traced.Marks!.HasNap);
        Assert.InRange(Rms(Truth.Value, traced.Outline), 0, 0.05);
    }

    [Fact]
    public void A_frame_round_the_panel_is_left_aside()
    {
        Point2[] outer = [new(-88, -45), new(88, -45), new(88, 45), new(-88, 45)];
        Point2[] inner = [.. outer.Select(p => p * 0.985)];
        ScanPicture scan = Flatbed();

        TracedPanel traced = Traced(scan.Of([ScanPicture.Ring(Truth.Value)], [(outer, Ink), (inner, scan.Ground)]), 200);

        Assert.Single(traced.Found.Panels);
        Assert.Equal(1, traced.Found.LeftAside);
        Assert.InRange(Rms(Truth.Value, traced.Outline), 0, 0.05);
    }

    [Fact]
    public void A_panel_of_the_colour_of_its_ground_is_a_clear_no()
    {
        ScanPicture same = Flatbed() with { Felt = new SKColor(236, 234, 227) };

        InputException no = Assert.Throws<InputException>(() => Traced(same.Of([ScanPicture.Ring(Truth.Value)]), 200));

        Assert.Contains("panel and ground cannot be told apart", no.Problem, StringComparison.Ordinal);
        Assert.Equal("scan.png", no.File);
    }

    [Fact]
    public void A_panel_over_the_border_is_refused()
    {
        IReadOnlyList<Point2> cut = [.. ScanPicture.Ring(Truth.Value).Select(p => p + new Point2(60, 0))];

        Assert.Contains(
            "runs over the picture's border", Assert.Throws<InputException>(() => Traced(Flatbed().Of([cut]), 200)).Problem,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_picture_without_marks_and_without_a_resolution_is_refused()
    {
        InputException no = Assert.Throws<InputException>(() => Traced(Flatbed().Of([ScanPicture.Ring(Truth.Value)]), null));

        Assert.Equal(AskedFor.Resolution, no.Asked);
        Assert.Contains("six marks", no.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Perspective_is_taken_out_to_the_last_digits_where_the_marks_are_exact()
    {
        Func<Point2, Point2> image = Photo(25).Image;
        Homography map = Homography.Between(MarkSheet.Marks, [.. MarkSheet.Marks.Select(image)])!;

        foreach (Point2 place in new Point2[] { new(0, 0), new(70, -100), new(-30, 55) })
        {
            Assert.Equal(0, (map.Image(place) - image(place)).Length, 1e-6);
        }
    }

    [Fact]
    public void Marks_that_lie_on_one_line_tell_no_perspective() =>
        Assert.Null(Homography.Between([.. MarkSheet.Marks.Select(p => new Point2(p.X + (2 * p.Y), p.X + (2 * p.Y)))], MarkSheet.Marks));

    [Fact]
    public void A_line_of_one_level_lies_between_the_pixels()
    {
        // A cone of values: its line of level 0 is a circle of radius 20 about the middle.
        const int side = 64;
        Contour line = Assert.Single(ContourTracer.Trace(
            side, side, i => 20 - (float)new Point2((i % side) - 31.3, (i / side) - 30.6).Length)!);

        Assert.All(line.Places, p => Assert.Equal(20, (p - new Point2(31.3, 30.6)).Length, 0.02));
        Assert.Equal(400 * Math.PI, line.Area, 1.0);
        Assert.Equal(31.3, line.Centroid.X, 0.01);
        Assert.False(line.IsAtBorder);
    }

    [Fact]
    public void Two_tones_are_parted_between_them()
    {
        // Otsu's own measure: any level between two tones that do not meet parts them.
        float[] values = [.. Enumerable.Repeat(50f, 300), .. Enumerable.Repeat(52f, 300), .. Enumerable.Repeat(200f, 400)];
        TwoTones tones = TwoTones.Of(new GreyGrid(100, values));

        Assert.InRange(tones.Parting, 52, 200);
        Assert.Equal(200, tones.Light, 0.6);
        Assert.Equal(51, tones.Dark, 1.5);
    }

    private static TracedPanel Traced(byte[] file, double? dpi) => ScanReader.Trace(InputText.Of("scan.png", file) with { Dpi = dpi });

    private static ScanPicture Flatbed(double width = 190, double height = 100) => new()
    {
        Size = ((int)(width / Pixel), (int)(height / Pixel)),
        Image = p => (p.Turned(SkewDeg * Math.PI / 180) + new Point2(width / 2, height / 2)) * (1 / Pixel),
    };

    // A camera 500 mm away, looking at the sheet's middle from a slant: the pinhole's own equations.
    private static ScanPicture Photo(double tiltDeg)
    {
        const double away = 500;
        const double focal = 4200;
        (double sin, double cos) = Math.SinCos(tiltDeg * Math.PI / 180);
        return new ScanPicture
        {
            Size = (2200, 2700),
            Image = p =>
            {
                double depth = away + (p.Y * sin);
                return new Point2(1100 + (focal * p.X / depth), 1350 + (focal * p.Y * cos / depth));
            },
            Felt = new SKColor(90, 140, 60),
        };
    }

    private static IEnumerable<(IReadOnlyList<Point2> Ring, SKColor Colour)> Marks() => MarkSheet.Marks.SelectMany(mark =>
        MarkSheet.Radii.Select((radius, i) => (ScanPicture.Disc(mark, radius), i % 2 == 0 ? SKColors.Black : SKColors.White)));

    private static IEnumerable<Point2> Grown(ArcOutline outline, double by)
    {
        ArcLengthCurve curve = new(outline);
        return Enumerable.Range(0, 1500).Select(i => curve.At(i * curve.Period / 1500))
            .Select(p => p.Place - (p.Derivative.Left * (by / p.Derivative.Length)));
    }

    // Distance of the traced edge from the true one, rms, after the turn and move that bring it nearest: Gauss and Newton's steps.
    private static double Rms(ArcOutline truth, ArcOutline traced)
    {
        PanelAverage laid = PanelAverage.Of(new ArcLengthCurve(truth), [traced]);

        // Of two edges the standard deviation about their mean is their distance over the root of two.
        return laid.SpreadMm * Math.Sqrt(2);
    }
}
