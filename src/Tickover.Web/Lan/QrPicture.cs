using System.Globalization;
using System.Text;
using QRCoder;

namespace Tickover.Web.Lan;

/// <summary>A QR code as one path of unit squares.</summary>
/// <param name="Side">Modules along a side, with the quiet zone.</param>
/// <param name="Path">The dark modules, as the d of an SVG path.</param>
internal sealed record QrPicture(int Side, string Path)
{
    /// <summary>The code of an address.</summary>
    public static QrPicture Of(string address)
    {
        using var generator = new QRCodeGenerator();
        using var code = generator.CreateQrCode(address, QRCodeGenerator.ECCLevel.M);
        var path = new StringBuilder();
        for (var y = 0; y < code.ModuleMatrix.Count; y++)
        {
            for (var x = 0; x < code.ModuleMatrix[y].Count; x++)
            {
                if (code.ModuleMatrix[y][x])
                {
                    path.Append(CultureInfo.InvariantCulture, $"M{x} {y}h1v1h-1z");
                }
            }
        }

        return new QrPicture(code.ModuleMatrix.Count, path.ToString());
    }
}
