using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Tanks.Sketching;

namespace Tickover.Reports.Tanks;

/// <summary>The sheet a tank is sketched on: which millimetres it shows, and where they stand in the drawing.</summary>
public sealed class SketchBoard
{
    private const double FullWidth = 772;
    private const double PhoneWidth = 366;
    private const double TallestFull = 500;
    private const double TallestPhone = 440;
    private const double Margin = 150;     // mm of free sheet around the corners
    private const double Whole = 100;      // mm: the sheet grows by whole squares

    // Room for a usual tank, so that the sheet stays as it is while the first one is sketched on it.
    private const double UsualLow = -100;
    private static readonly (double Wide, double Tall) UsualFull = (900, 550);
    private static readonly (double Wide, double Tall) UsualPhone = (700, 600);

    /// <summary>Lays out the sheet.</summary>
    /// <param name="sketch">What is to stand on it.</param>
    /// <param name="size">For a wide page or for a phone.</param>
    public SketchBoard(OutlineSketch sketch, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(sketch);
        IsPhone = size is PictureSize.Phone;
        Width = IsPhone ? PhoneWidth : FullWidth;
        var usual = IsPhone ? UsualPhone : UsualFull;
        var (left, wide) = Span([.. sketch.Corners.Select(c => c.Right)], usual.Wide);
        var (low, tall) = Span([.. sketch.Corners.Select(c => c.Up)], usual.Tall);
        PixelsPerMillimetre = Math.Min(Width / wide, (IsPhone ? TallestPhone : TallestFull) / tall);
        LeftMillimetres = left - (Width / PixelsPerMillimetre - wide) / 2;
        LowMillimetres = low;
        Height = tall * PixelsPerMillimetre;
    }

    /// <summary>Whether it is drawn for a phone.</summary>
    public bool IsPhone { get; }

    /// <summary>Width of the drawing.</summary>
    public double Width { get; }

    /// <summary>Height of the drawing.</summary>
    public double Height { get; }

    /// <summary>Drawing units a millimetre.</summary>
    public double PixelsPerMillimetre { get; }

    /// <summary>Millimetres right of the tank's own point at the left edge.</summary>
    public double LeftMillimetres { get; }

    /// <summary>Millimetres above the tank's own point at the lower edge.</summary>
    public double LowMillimetres { get; }

    internal double RightMillimetres => LeftMillimetres + Width / PixelsPerMillimetre;

    internal double HighMillimetres => LowMillimetres + Height / PixelsPerMillimetre;

    internal ChartPoint At(double right, double up) => new((right - LeftMillimetres) * PixelsPerMillimetre, Height - (up - LowMillimetres) * PixelsPerMillimetre);

    private static (double Low, double Size) Span(double[] places, double usual)
    {
        if (places.Length == 0 || (places.Min() >= UsualLow && places.Max() <= UsualLow + usual))
        {
            return (UsualLow, usual);
        }

        var low = Math.Floor((places.Min() - Margin) / Whole) * Whole;
        return (low, Math.Max(usual, Math.Ceiling((places.Max() + Margin - low) / Whole) * Whole));
    }
}
