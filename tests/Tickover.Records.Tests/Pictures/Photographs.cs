using SkiaSharp;

namespace Tickover.Records.Tests.Pictures;

/// <summary>Pictures made for the tests: red above left, blue elsewhere, so that it shows which way up they are.</summary>
internal static class Photographs
{
    public const int Width = 64;
    public const int Height = 48;

    public static MemoryStream Jpeg(int width = Width, int height = Height) => new(Encoded(SKEncodedImageFormat.Jpeg, width, height, SKColors.Blue));

    public static byte[] Encoded(SKEncodedImageFormat format, int width, int height, SKColor ground)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Premul));
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(ground);
            using var red = new SKPaint { Color = SKColors.Red };
            canvas.DrawRect(0, 0, width / 2f, height / 2f, red);
        }

        using var image = SKImage.FromBitmap(bitmap);
        using var data = image.Encode(format, 95);
        return data.ToArray();
    }
}
