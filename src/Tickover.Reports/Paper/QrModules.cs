using QRCoder;
using Tickover.Reports.Charts;

namespace Tickover.Reports.Paper;

/// <summary>A QR code of level M as areas (ISO/IEC 18004), with its quiet zone.</summary>
internal sealed class QrModules
{
    private const double Unit = 4;
    private readonly List<System.Collections.BitArray> _rows;

    internal QrModules(string address)
    {
        using var data = QRCodeGenerator.GenerateQrCode(address, QRCodeGenerator.ECCLevel.M, forceUtf8: true);
        _rows = [.. data.ModuleMatrix];
    }

    /// <summary>Width and height in drawing units.</summary>
    internal double Side => _rows.Count * Unit;

    internal void Draw(IDrawing drawing)
    {
        drawing.Plate(new Box(0, 0, Side, Side), 0, Look.Filled(Paint.White));
        drawing.Path(Dark().Select(Polyline.Rectangle), Look.Filled(Paint.Black));
    }

    // Dark modules side by side are one area: less to draw, and no hair lines between them
    private IEnumerable<Box> Dark()
    {
        for (var y = 0; y < _rows.Count; y++)
        {
            for (var x = 0; x < _rows[y].Count; x++)
            {
                var from = x;
                while (x < _rows[y].Count && _rows[y][x])
                {
                    x++;
                }

                if (x > from)
                {
                    yield return new Box(from * Unit, y * Unit, (x - from) * Unit, Unit);
                }
            }
        }
    }
}
