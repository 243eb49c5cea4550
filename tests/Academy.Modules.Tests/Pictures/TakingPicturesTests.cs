using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using Academy.Competence.Quizzes;
using Academy.Modules.Pictures;
using SkiaSharp;

namespace Academy.Modules.Tests.Pictures;

public class TakingPicturesTests
{
    private const string Damaged = "The photo is damaged, or breaks off. Save it anew and send that.";

    public static TheoryData<SKEncodedImageFormat, string, string> Kinds =>
        new()
        {
            { SKEncodedImageFormat.Png, "back.png", "image/png" },
            { SKEncodedImageFormat.Jpeg, "back.jpg", "image/jpeg" },
            { SKEncodedImageFormat.Webp, "back.webp", "image/webp" },
        };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_photo_keeps_its_kind_whatever_its_name_said(SKEncodedImageFormat kind, string file, string type)
    {
        var taken = Taken(Encoded(Halves(300, 200), kind));

        Assert.Equal((file, type, 300, 200), (taken.File, taken.ContentType, taken.Width, taken.Height));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void What_was_taken_in_is_shown_by_a_module(SKEncodedImageFormat kind, string file, string type)
    {
        var taken = Taken(Encoded(Halves(300, 200), kind));
        using var folder = new TestFolder().WithSample("(press.svg)", $"({file})").With("towels", file, taken.Bytes.ToArray());
        File.Delete(Path.Combine(folder.Root, "towels", "press.svg"));
        var library = folder.Load();

        Assert.Empty(library.Findings);
        Assert.Equal(type, library.FindPicture("towels", file)!.ContentType);
        SafePage.Assert(library.Lessons[0].Html);
        var lesson = library.Lessons[0];
        Assert.NotNull(KeptEdition.Read(lesson.Module.Name, lesson.Module.Hash, KeptEdition.Of(lesson)));
    }

    [Theory]
    [InlineData(3200, 1000, 1600, 500)]
    [InlineData(1000, 4000, 400, 1600)]
    [InlineData(1600, 1600, 1600, 1600)]
    [InlineData(1601, 1, 1600, 1)]
    [InlineData(1, 1, 1, 1)]
    public void The_longest_side_is_1600_points_at_most(int width, int height, int keptWidth, int keptHeight)
    {
        foreach (var kind in (SKEncodedImageFormat[])[SKEncodedImageFormat.Png, SKEncodedImageFormat.Jpeg])
        {
            var taken = Taken(Encoded(Halves(width, height), kind));

            Assert.Equal((keptWidth, keptHeight), (taken.Width, taken.Height));
        }
    }

    // CIPA DC-008 (Exif 2.3), tag 0x0112: how the stored rows and columns stand to the upright picture.
    [Theory]
    [InlineData(1, 40, 20, 'l')]
    [InlineData(2, 40, 20, 'r')]
    [InlineData(3, 40, 20, 'r')]
    [InlineData(4, 40, 20, 'l')]
    [InlineData(5, 20, 40, 't')]
    [InlineData(6, 20, 40, 't')]
    [InlineData(7, 20, 40, 'b')]
    [InlineData(8, 20, 40, 'b')]
    public void A_photo_stands_upright_however_the_phone_was_held(byte orientation, int width, int height, char red)
    {
        var taken = Taken(WithExif(Encoded(Halves(40, 20), SKEncodedImageFormat.Jpeg), orientation));

        Assert.Equal((width, height), (taken.Width, taken.Height));
        using var upright = SKBitmap.Decode(taken.Bytes.ToArray());
        var (x, y) = red switch
        {
            'l' => (2, height / 2),
            'r' => (width - 3, height / 2),
            't' => (width / 2, 2),
            _ => (width / 2, height - 3),
        };
        var point = upright.GetPixel(x, y);
        Assert.True(point is { Red: > 200, Blue: < 60 }, $"{orientation}: {point}");
    }

    [Fact]
    public void Where_and_with_what_it_was_taken_is_not_kept()
    {
        var sent = WithExif(Encoded(Halves(40, 20), SKEncodedImageFormat.Jpeg), orientation: 1, "52.3702 N, on a secret phone");
        Assert.Contains("secret phone", Encoding.Latin1.GetString(sent), StringComparison.Ordinal);

        var kept = Encoding.Latin1.GetString(Taken(sent).Bytes.Span);

        Assert.DoesNotContain("secret phone", kept, StringComparison.Ordinal);
        Assert.DoesNotContain("Exif", kept, StringComparison.Ordinal);
    }

    [Fact]
    public void A_photo_put_into_the_folder_with_all_that_a_camera_writes_is_told_and_left_out()
    {
        using var folder = new TestFolder()
            .WithSample("(press.svg)", "(press.jpg)")
            .With("towels", "press.jpg", WithExif(Encoded(Halves(40, 20), SKEncodedImageFormat.Jpeg), orientation: 1));

        Assert.Contains(
            new Finding(
                "towels/press.jpg",
                0,
                Severity.Fault,
                "The picture may tell where and with what it was taken. Save it without that, or take it in through the portal."
            ),
            folder.Load().Findings
        );
        Assert.Null(folder.Load().FindPicture("towels", "press.jpg"));
    }

    [Fact]
    public void A_photo_too_rich_for_half_a_megabyte_is_written_smaller()
    {
        var jpeg = Taken(Encoded(Noise(1600, 1200, alpha: false), SKEncodedImageFormat.Jpeg));
        var png = Taken(Encoded(Noise(1200, 900, alpha: false), SKEncodedImageFormat.Png));
        var seeThrough = Taken(Encoded(Noise(1000, 800, alpha: true), SKEncodedImageFormat.Png));

        Assert.Equal(("back.jpg", "back.jpg", "back.webp"), (jpeg.File, png.File, seeThrough.File));
        Assert.All([jpeg, png, seeThrough], taken => Assert.InRange(taken.Bytes.Length, 1, 512 * 1024));
    }

    [Fact]
    public void What_takes_the_place_of_a_photo_gets_its_kind()
    {
        var sent = Encoded(Halves(300, 200), SKEncodedImageFormat.Png);

        var (picture, findings) = TakingPictures.Take("back", sent, ".webp");

        Assert.Empty(findings);
        Assert.Equal(("back.webp", "image/webp"), (picture!.File, picture.ContentType));
    }

    [Theory]
    [InlineData(".svg")]
    [InlineData(".png")]
    public void A_drawing_does_not_take_the_place_of_a_photo_nor_a_photo_that_of_a_drawing(string ending)
    {
        var sent =
            ending == ".svg" ? Encoded(Halves(3, 2), SKEncodedImageFormat.Png) : Encoding.UTF8.GetBytes(TestFolder.SamplePicture);

        Assert.Equal(
            "A drawing takes the place of a drawing and a photo that of a photo. Take this in under a name of its own.",
            Refused(sent, ending)
        );
    }

    [Fact]
    public void A_plain_drawing_is_taken_in_and_one_that_runs_something_is_not()
    {
        var drawing = Encoding.UTF8.GetBytes(TestFolder.SamplePicture);
        Assert.Equal("back.svg", Taken(drawing).File);

        Assert.Equal(
            "The picture holds the element <script>. Save it as a plain drawing without that.",
            Refused("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><script>alert(1)</script></svg>"u8.ToArray())
        );
    }

    // A head that promises more points than any memory holds: 100,000 by 100,000 in a file of a few hundred bytes.
    [Theory]
    [InlineData(100_000, 100_000)]
    [InlineData(int.MaxValue, int.MaxValue)]
    [InlineData(40_000_001, 1)]
    public void A_small_file_that_stands_for_a_huge_picture_is_refused_before_it_is_read(int width, int height) =>
        Assert.Equal(
            $"The photo is {width} by {height} points; 40 million together are the most. Make it smaller.",
            Refused(EmptyPng(width, height))
        );

    [Fact]
    public void A_file_that_is_too_large_is_refused() =>
        Assert.Equal("The file has 5121 KB; 5120 KB are the most. Make it smaller.", Refused(new byte[5121 * 1024]));

    [Theory]
    [InlineData("")]
    [InlineData("just words")]
    [InlineData("GIF89a")]
    [InlineData("%PDF-1.7")]
    [InlineData("MZ")]
    public void What_is_no_picture_is_refused(string sent) =>
        Assert.Equal(
            "This is no picture that a module can show. Choose a photo (PNG, JPEG or WebP) or a drawing (SVG).",
            Refused(Encoding.ASCII.GetBytes(sent))
        );

    [Theory]
    [InlineData(SKEncodedImageFormat.Png)]
    [InlineData(SKEncodedImageFormat.Jpeg)]
    [InlineData(SKEncodedImageFormat.Webp)]
    public void A_photo_that_breaks_off_is_refused(SKEncodedImageFormat kind)
    {
        var sent = Encoded(Noise(200, 200, alpha: false), kind);

        Assert.Equal(Damaged, Refused(sent[..(sent.Length / 2)]));
    }

    // Any byte of a sound photo struck by another: taken in or refused with words, never an exception.
    [Theory]
    [InlineData(SKEncodedImageFormat.Png)]
    [InlineData(SKEncodedImageFormat.Jpeg)]
    [InlineData(SKEncodedImageFormat.Webp)]
    public void A_photo_with_bytes_struck_by_chance_is_taken_in_or_refused(SKEncodedImageFormat kind)
    {
        SplitMix64 chance = new(3);
        var sound = Encoded(Noise(60, 60, alpha: false), kind);
        foreach (var _ in Enumerable.Range(0, 200))
        {
            byte[] struck = [.. sound];
            for (var strike = 0; strike < 4; strike++)
                struck[chance.Below(Math.Min(struck.Length, 200))] = (byte)chance.Below(256);

            var (picture, findings) = TakingPictures.Take("back", struck);

            Assert.True(picture is null != findings.IsEmpty);
        }
    }

    [Theory]
    [InlineData("Back of_the Dog.JPG", "back-of-the-dog")]
    [InlineData("IMG_2041.jpeg", "img-2041")]
    [InlineData("Füße.png", "fue")]
    [InlineData("../../etc/passwd", "passwd")]
    [InlineData("犬.png", "picture")]
    [InlineData("", "picture")]
    public void A_file_is_called_by_its_own_name_in_small_letters(string file, string name) =>
        Assert.Equal(name, TakingPictures.NameFrom(file));

    private static Picture Taken(byte[] sent)
    {
        var (picture, findings) = TakingPictures.Take("back", sent);
        Assert.Empty(findings);
        return picture!;
    }

    private static string Refused(byte[] sent, string? ending = null)
    {
        var (picture, findings) = TakingPictures.Take("back", sent, ending);
        Assert.Null(picture);
        return Assert.Single(findings).Message;
    }

    private static byte[] Encoded(SKBitmap bitmap, SKEncodedImageFormat kind)
    {
        using (bitmap)
        {
            using var written = bitmap.Encode(kind, 95);
            return written.ToArray();
        }
    }

    /// <summary>The left half red, the right one blue.</summary>
    private static SKBitmap Halves(int width, int height)
    {
        SKBitmap bitmap = new(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        bitmap.Erase(SKColors.Blue);
        bitmap.Erase(SKColors.Red, new SKRectI(0, 0, width / 2, height));
        return bitmap;
    }

    private static SKBitmap Noise(int width, int height, bool alpha)
    {
        SplitMix64 chance = new(7);
        SKBitmap bitmap = new(
            new SKImageInfo(width, height, SKColorType.Rgba8888, alpha ? SKAlphaType.Unpremul : SKAlphaType.Opaque)
        );
        var points = new SKColor[width * height];
        for (var at = 0; at < points.Length; at++)
        {
            var drawn = chance.Below(1 << 24);
            points[at] = new(
                (byte)(drawn & 255),
                (byte)(drawn >> 8 & 255),
                (byte)(drawn >> 16),
                alpha ? (byte)(at % width * 255 / width) : (byte)255
            );
        }
        bitmap.Pixels = points;
        return bitmap;
    }

    // TIFF 6.0 inside an APP1 segment, as cameras write it: big end first, one directory with one entry, and words behind it.
    private static byte[] WithExif(byte[] jpeg, byte orientation, string words = "a phone")
    {
        byte[] body =
        [
            .. "Exif\0\0MM\0*"u8,
            .. (byte[])[0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0, 0, 0, 0, 0],
            .. Encoding.ASCII.GetBytes(words),
        ];
        var length = new byte[2];
        BinaryPrimitives.WriteUInt16BigEndian(length, (ushort)(body.Length + 2));
        return [.. jpeg[..2], 0xFF, 0xE1, .. length, .. body, .. jpeg[2..]];
    }

    private static byte[] EmptyPng(int width, int height)
    {
        var head = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(head, width);
        BinaryPrimitives.WriteInt32BigEndian(head.AsSpan(4), height);
        (head[8], head[9]) = (8, 2);
        using MemoryStream points = new();
        using (ZLibStream packed = new(points, CompressionLevel.Fastest, leaveOpen: true))
            packed.Write(new byte[1000]);
        return
        [
            0x89,
            .. "PNG\r\n"u8,
            0x1A,
            0x0A,
            .. Chunk("IHDR", head),
            .. Chunk("IDAT", points.ToArray()),
            .. Chunk("IEND", []),
        ];
    }

    private static byte[] Chunk(string kind, byte[] content)
    {
        byte[] named = [.. Encoding.ASCII.GetBytes(kind), .. content];
        var (length, sum) = (new byte[4], new byte[4]);
        BinaryPrimitives.WriteInt32BigEndian(length, content.Length);
        BinaryPrimitives.WriteUInt32BigEndian(sum, Crc(named));
        return [.. length, .. named, .. sum];
    }

    private static uint Crc(byte[] bytes)
    {
        var sum = 0xFFFFFFFFu;
        foreach (var one in bytes)
        {
            sum ^= one;
            for (var bit = 0; bit < 8; bit++)
                sum = (sum & 1) == 1 ? sum >> 1 ^ 0xEDB88320u : sum >> 1;
        }
        return ~sum;
    }
}
