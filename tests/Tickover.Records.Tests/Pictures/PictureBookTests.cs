using System.Buffers.Binary;
using MetadataExtractor;
using MetadataExtractor.Formats.Exif;
using SkiaSharp;
using Tickover.Records.Tests.Opening;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Tests.Pictures;

/// <summary>What becomes of a file from a camera (OWASP ASVS 5.0, V5 File Handling).</summary>
public sealed class PictureBookTests : IAsyncLifetime
{
    private RecordStore _store = null!;
    private PictureBook _book = null!;

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        _store = await Opened.OpenAsync(Opened.NewPlace());
        _book = new PictureBook(_store);
    }

    public ValueTask DisposeAsync()
    {
        _store.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Where_it_was_taken_does_not_come_along()
    {
        var file = ExifJpeg.With(Photographs.Jpeg().ToArray(), 1);
        Assert.NotNull(ImageMetadataReader.ReadMetadata(new MemoryStream(file)).OfType<GpsDirectory>().Single().GetGeoLocation());
        Assert.True(Holds(file, ExifJpeg.Latitude));

        var (whole, small) = await TakenAsync(file);

        Assert.All(new[] { whole, small }, kept =>
        {
            Assert.False(Holds(kept, ExifJpeg.Latitude));
            Assert.False(Holds(kept, "Exif"u8.ToArray()));
            Assert.Empty(ImageMetadataReader.ReadMetadata(new MemoryStream(kept)).OfType<GpsDirectory>());
            Assert.Empty(ImageMetadataReader.ReadMetadata(new MemoryStream(kept)).OfType<ExifDirectoryBase>());
        });
    }

    // Exif 2.32, table 6, tag 0x0112: where the stored first row and first column lie in the picture as seen; the red quarter is stored at row 0, column 0.
    [Theory]
    [InlineData(1, false, false, false)]
    [InlineData(2, true, false, false)]
    [InlineData(3, true, true, false)]
    [InlineData(4, false, true, false)]
    [InlineData(5, false, false, true)]
    [InlineData(6, true, false, true)]
    [InlineData(7, true, true, true)]
    [InlineData(8, false, true, true)]
    public async Task A_picture_is_turned_upright(int orientation, bool redOnTheRight, bool redBelow, bool turned)
    {
        var (whole, small) = await TakenAsync(ExifJpeg.With(Photographs.Jpeg().ToArray(), orientation));

        foreach (var kept in new[] { whole, small })
        {
            using var bitmap = SKBitmap.Decode(kept);
            Assert.Equal(turned ? (Photographs.Height, Photographs.Width) : (Photographs.Width, Photographs.Height), (bitmap.Width, bitmap.Height));
            foreach (var (right, below) in new[] { (false, false), (true, false), (false, true), (true, true) })
            {
                var pixel = bitmap.GetPixel(bitmap.Width * (right ? 3 : 1) / 4, bitmap.Height * (below ? 3 : 1) / 4);
                Assert.Equal(right == redOnTheRight && below == redBelow, pixel.Red > pixel.Blue);
            }
        }
    }

    [Fact]
    public async Task What_can_be_seen_through_becomes_white()
    {
        var (whole, _) = await TakenAsync(Photographs.Encoded(SKEncodedImageFormat.Png, 40, 40, SKColors.Transparent));

        using var bitmap = SKBitmap.Decode(whole);
        Assert.All(new[] { bitmap.GetPixel(30, 30).Red, bitmap.GetPixel(30, 30).Green, bitmap.GetPixel(30, 30).Blue }, c => Assert.InRange(c, 250, 255));
        Assert.InRange(bitmap.GetPixel(10, 10).Red, 200, 255);
        Assert.InRange(bitmap.GetPixel(10, 10).Green, 0, 60);
    }

    [Fact]
    public async Task A_large_picture_is_made_smaller_and_keeps_its_shape()
    {
        var id = Id.New<Photograph>();

        var intake = await _book.TakeInAsync(id, Photographs.Jpeg(4000, 3000), Cancellation);

        Assert.Equal((null, 2400, 1800), (intake.Refusal, intake.Width, intake.Height));
        using var small = SKBitmap.Decode(await _book.ReadAsync(id, PictureScale.Small, Cancellation));
        Assert.Equal((480, 360), (small.Width, small.Height));
    }

    [Theory]
    [InlineData("")]
    [InlineData("Dear Sirs")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'/>")]
    [InlineData("GIF89a")]
    public async Task What_is_no_picture_is_refused(string text)
    {
        Assert.Contains("no picture", await RefusalAsync(System.Text.Encoding.UTF8.GetBytes(text)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    public async Task A_picture_cut_short_is_refused(double part)
    {
        var file = Photographs.Jpeg(800, 600).ToArray();

        Assert.Contains("cut short", await RefusalAsync(file[..(int)(file.Length * part)]), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_photograph_of_more_than_60_MB_is_refused_and_one_of_50_MB_is_taken()
    {
        // Bytes after the picture's end are what makes it large: 50 MB from a camera are 200 million pixels, and this machine is small.
        var file = Photographs.Jpeg().ToArray();

        Assert.Null((await _book.TakeInAsync(Id.New<Photograph>(), new MemoryStream([.. file, .. new byte[50_000_000]]), Cancellation)).Refusal);
        Assert.Contains("larger than 60 MB", await RefusalAsync([.. file, .. new byte[63_000_000]]), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(60_000, 60_000)]
    [InlineData(65_500, 4_000)]
    public async Task A_picture_that_would_unpack_to_gigabytes_is_refused(int width, int height)
    {
        var png = Photographs.Encoded(SKEncodedImageFormat.Png, 8, 8, SKColors.Blue);
        BinaryPrimitives.WriteInt32BigEndian(png.AsSpan(16), width);
        BinaryPrimitives.WriteInt32BigEndian(png.AsSpan(20), height);
        BinaryPrimitives.WriteUInt32BigEndian(png.AsSpan(29), Crc32(png.AsSpan(12, 17)));
        var before = GC.GetTotalAllocatedBytes();

        Assert.Contains("200 million points", await RefusalAsync(png), StringComparison.Ordinal);

        Assert.InRange(GC.GetTotalAllocatedBytes() - before, 0, 100_000_000);
    }

    [Fact]
    public async Task The_same_photograph_twice_is_taken_once()
    {
        var id = Id.New<Photograph>();

        var first = await _book.TakeInAsync(id, Photographs.Jpeg(), Cancellation);
        var again = await _book.TakeInAsync(id, Photographs.Jpeg(100, 100), Cancellation);

        Assert.Equal(first, again);
        Assert.Null(first.Refusal);
    }

    [Fact]
    public async Task The_same_photograph_by_many_at_once_is_taken_once()
    {
        var id = Id.New<Photograph>();

        var intakes = await Task.WhenAll(Enumerable.Range(0, 8).Select(k => Task.Run(() => _book.TakeInAsync(id, Photographs.Jpeg(100 + k, 100), Cancellation), Cancellation)));

        Assert.Single(intakes.Select(i => i.Hash).Distinct(StringComparer.Ordinal));
    }

    // PNG specification, annex D.
    private static uint Crc32(ReadOnlySpan<byte> bytes)
    {
        var crc = uint.MaxValue;
        foreach (var one in bytes)
        {
            crc ^= one;
            for (var bit = 0; bit < 8; bit++)
            {
                crc = (crc >> 1) ^ ((crc & 1) * 0xEDB88320);
            }
        }

        return ~crc;
    }

    private static bool Holds(byte[] bytes, byte[] wanted) => bytes.AsSpan().IndexOf(wanted) >= 0;

    private async Task<(byte[] Whole, byte[] Small)> TakenAsync(byte[] file)
    {
        var id = Id.New<Photograph>();
        var intake = await _book.TakeInAsync(id, new MemoryStream(file), Cancellation);
        Assert.Null(intake.Refusal);
        return ((await _book.ReadAsync(id, PictureScale.Whole, Cancellation))!, (await _book.ReadAsync(id, PictureScale.Small, Cancellation))!);
    }

    private async Task<string> RefusalAsync(byte[] file)
    {
        var id = Id.New<Photograph>();
        var intake = await _book.TakeInAsync(id, new MemoryStream(file), Cancellation);
        Assert.Null(await _book.ReadAsync(id, PictureScale.Whole, Cancellation));
        return intake.Refusal ?? "";
    }
}
