using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;
using SkiaSharp;
using Tickover.Records.Model;
using Tickover.Workshop.Visits;

namespace Tickover.Records;

/// <summary>The pictures, in a table of their own so that a backup holds everything in one file.</summary>
/// <param name="store">The open record.</param>
public sealed class PictureBook(RecordStore store) : IPictures
{
    /// <summary>Largest file taken in, in bytes.</summary>
    public const long LargestFile = 60L * 1024 * 1024;

    // A camera's largest pictures today; decoding one of these takes some 800 MB for a moment, so one is decoded at a time.
    private const long MostPixels = 200_000_000;
    private const int LongerSide = 2400;
    private const int SmallSide = 480;
    private const int Quality = 85;
    private const int SmallQuality = 78;

    private static readonly SemaphoreSlim OneAtATime = new(1, 1);

    /// <inheritdoc/>
    public async Task<PictureIntake> TakeInAsync(Id<Photograph> photograph, Stream file, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(file);
        if (await FindAsync(photograph, cancellation) is { } before)
        {
            return before;
        }

        var bytes = await ReadAllAsync(file, cancellation);
        if (bytes is null)
        {
            return Refused("The photograph is larger than 60 MB. Set the camera to a smaller size and take it again.");
        }

        await OneAtATime.WaitAsync(cancellation);
        try
        {
            return Develop(photograph, bytes, out var refusal) is { } row ? await KeepAsync(row, cancellation) : Refused(refusal);
        }
        finally
        {
            OneAtATime.Release();
        }
    }

    /// <inheritdoc/>
    public Task<byte[]?> ReadAsync(Id<Photograph> photograph, PictureScale small, CancellationToken cancellation = default) => store.ReadAsync(context =>
        context.Pictures.AsNoTracking().Where(p => p.Photograph == photograph.Value).Select(p => small == PictureScale.Small ? p.Small : p.Whole).FirstOrDefaultAsync(cancellation));

    private static PictureIntake Refused(string why) => new(why, "", 0, 0);

    private static async Task<byte[]?> ReadAllAsync(Stream file, CancellationToken cancellation)
    {
        using var memory = new MemoryStream();
        var buffer = new byte[81920];
        int read;
        while ((read = await file.ReadAsync(buffer, cancellation)) > 0)
        {
            if (memory.Length + read > LargestFile)
            {
                return null;
            }

            memory.Write(buffer, 0, read);
        }

        return memory.ToArray();
    }

    // Drawn anew from its pixels: whatever else the file carried, where it was taken above all, does not come along.
    private static PictureRow? Develop(Id<Photograph> photograph, byte[] file, out string refusal)
    {
        refusal = "This file is no picture that can be read. JPEG, PNG and WebP are.";
        using var data = SKData.CreateCopy(file);
        using var codec = SKCodec.Create(data);
        if (codec is null)
        {
            return null;
        }

        if ((long)codec.Info.Width * codec.Info.Height is <= 0 or > MostPixels)
        {
            refusal = "The picture has more than 200 million points. Set the camera to a smaller size and take it again.";
            return null;
        }

        // Half a picture may lack the very place that was photographed, and nobody would know.
        using var bitmap = new SKBitmap(codec.Info.WithColorType(SKColorType.Rgba8888).WithAlphaType(SKAlphaType.Premul));
        if (codec.GetPixels(bitmap.Info, bitmap.GetPixels()) != SKCodecResult.Success)
        {
            refusal = "The picture was cut short on its way, or is damaged. Send it again.";
            return null;
        }

        using var upright = Upright(bitmap, codec.EncodedOrigin);
        using var whole = Scaled(upright, LongerSide);
        using var small = Scaled(whole, SmallSide);
        var jpeg = Jpeg(whole, Quality);
        return new PictureRow
        {
            Photograph = photograph.Value,
            Whole = jpeg,
            Small = Jpeg(small, SmallQuality),
            Width = whole.Width,
            Height = whole.Height,
            Hash = Convert.ToHexStringLower(SHA256.HashData(jpeg)),
        };
    }

    /// <summary>Takes over a picture that a record of ours has written: its bytes as they are, the small one made anew.</summary>
    /// <returns>The row, or null where it is no JPEG or carries more than a picture.</returns>
    internal static PictureRow? Adopt(Guid photograph, byte[] jpeg)
    {
        using var data = SKData.CreateCopy(jpeg);
        using var codec = SKCodec.Create(data);
        if (codec is not { EncodedFormat: SKEncodedImageFormat.Jpeg } || Math.Max(codec.Info.Width, codec.Info.Height) > LongerSide || JpegSegments.CarryMore(jpeg))
        {
            return null;
        }

        using var bitmap = SKBitmap.Decode(codec);
        if (bitmap is null)
        {
            return null;
        }

        using var whole = SKImage.FromBitmap(bitmap);
        using var small = Scaled(whole, SmallSide);
        return new PictureRow
        {
            Photograph = photograph,
            Whole = jpeg,
            Small = Jpeg(small, SmallQuality),
            Width = whole.Width,
            Height = whole.Height,
            Hash = Convert.ToHexStringLower(SHA256.HashData(jpeg)),
        };
    }

    private static byte[] Jpeg(SKImage image, int quality)
    {
        using var encoded = image.Encode(SKEncodedImageFormat.Jpeg, quality);
        return encoded.ToArray();
    }

    private static SKImage Scaled(SKImage image, int longerSide)
    {
        var factor = Math.Min(1.0, (double)longerSide / Math.Max(image.Width, image.Height));
        var info = new SKImageInfo(Math.Max(1, (int)Math.Round(image.Width * factor)), Math.Max(1, (int)Math.Round(image.Height * factor)), SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var surface = SKSurface.Create(info);
        surface.Canvas.Clear(SKColors.White);
        using var paint = new SKPaint();
        surface.Canvas.DrawImage(image, new SKRect(0, 0, info.Width, info.Height), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear), paint);
        return surface.Snapshot();
    }

    private static SKImage Upright(SKBitmap bitmap, SKEncodedOrigin origin)
    {
        var turned = origin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;
        var (width, height) = turned ? (bitmap.Height, bitmap.Width) : (bitmap.Width, bitmap.Height);
        using var surface = SKSurface.Create(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Premul));
        surface.Canvas.SetMatrix(Matrix(origin, width, height));
        surface.Canvas.DrawBitmap(bitmap, 0, 0);
        return surface.Snapshot();
    }

    // Exif 2.32, tag 0x0112, values 1 to 8: how the stored rows and columns lie in the upright picture.
    private static SKMatrix Matrix(SKEncodedOrigin origin, float width, float height) => origin switch
    {
        SKEncodedOrigin.TopRight => new SKMatrix(-1, 0, width, 0, 1, 0, 0, 0, 1),
        SKEncodedOrigin.BottomRight => new SKMatrix(-1, 0, width, 0, -1, height, 0, 0, 1),
        SKEncodedOrigin.BottomLeft => new SKMatrix(1, 0, 0, 0, -1, height, 0, 0, 1),
        SKEncodedOrigin.LeftTop => new SKMatrix(0, 1, 0, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightTop => new SKMatrix(0, -1, width, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightBottom => new SKMatrix(0, -1, width, -1, 0, height, 0, 0, 1),
        SKEncodedOrigin.LeftBottom => new SKMatrix(0, 1, 0, -1, 0, height, 0, 0, 1),
        _ => SKMatrix.Identity,
    };

    private Task<PictureIntake?> FindAsync(Id<Photograph> photograph, CancellationToken cancellation) => store.ReadAsync(context =>
        context.Pictures.AsNoTracking().Where(p => p.Photograph == photograph.Value).Select(p => new PictureIntake(null, p.Hash, p.Width, p.Height)).FirstOrDefaultAsync(cancellation));

    private Task<PictureIntake> KeepAsync(PictureRow row, CancellationToken cancellation) => store.WriteAloneAsync(
        async context =>
        {
            // Sent twice at once: the answer speaks of the one that is kept.
            var kept = await context.Pictures.AsNoTracking()
                .Where(p => p.Photograph == row.Photograph).Select(p => new PictureIntake(null, p.Hash, p.Width, p.Height)).FirstOrDefaultAsync(cancellation);
            if (kept is not null)
            {
                return kept;
            }

            context.Pictures.Add(row);
            await context.SaveChangesAsync(CancellationToken.None);
            return new PictureIntake(null, row.Hash, row.Width, row.Height);
        },
        cancellation);
}
