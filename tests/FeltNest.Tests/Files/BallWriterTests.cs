using FeltNest.Ball;
using FeltNest.Files;
using FeltNest.Files.Balls;
using FeltNest.Tests.Panel;
using Xunit;

namespace FeltNest.Tests.Files;

public sealed class BallWriterTests
{
    [Fact]
    public void A_ball_with_a_shaped_seam_is_read_back_as_it_was_written()
    {
        SeamSpec seam = new()
        {
            Curve = SeamFamily.Shaped,
            WaistMm = 30.25,
            SeamGapMm = 0.4,
            Offsets = [new SeamOffset(6, 0.5), new SeamOffset(10, -0.0312)],
        };
        BallSpec usual = Balls.Usual();
        BallSpec ball = usual with { Seam = seam, Felt = usual.Felt with { MaxCompressionPercent = 18 } };

        BallSpec read = BallReader.Read(InputText.Of("ball.json", BallWriter.Write(ball, "a test"))).Ball;

        Assert.Equal(
            ball with { Seam = seam with { Offsets = null } }, read with { Seam = read.Seam with { Offsets = null }, Given = ball.Given });
        Assert.Equal(seam.Offsets, read.Seam.Offsets);
    }

    [Fact]
    public void Offsets_beside_another_family_are_refused()
    {
        BallSpec ball = Balls.Usual();
        SeamSpec seam = ball.Seam with { Offsets = [new SeamOffset(6, 0.5)] };

        InputException refused = Assert.Throws<InputException>(() =>
            BallReader.Read(InputText.Of("ball.json", BallWriter.Write(ball with { Seam = seam }, "a test"))));

        Assert.Equal("seam.offsets", refused.Field);
    }
}
