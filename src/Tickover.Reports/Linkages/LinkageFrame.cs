using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Linkages.Parts;

namespace Tickover.Reports.Linkages;

/// <summary>Where things stand in the picture of a linkage: the plan above, the two charts beneath; mm to drawing units.</summary>
internal sealed class LinkageFrame
{
    private const double FullWidth = 772;
    private const double PhoneWidth = 366;
    private const double Top = 34;                 // a heading
    private const double LabelHeight = 48;         // two lines of words beyond the carburettors
    private const double NarrowLabelHeight = 66;   // three on a phone, where two carburettors stand side by side
    private const double NoLabelHeight = 12;       // none where the words find room beside
    private const double WordsWidth = 180;         // angle, air and the word for it
    private const double PhoneRow = 30;            // front and scale have a row of their own
    private const double TallestFull = 300;
    private const double TallestPhone = 380;
    private const double ChartLeft = 44;
    private const double ChartHeight = 150;
    private const double ChartHeading = 42;
    private const double AxisHeight = 40;
    private const double Largest = 1.6;            // units a mm: a small linkage is not blown up

    private readonly double _scale;
    private readonly ChartPoint _middle;
    private readonly ChartPoint _centre;

    internal LinkageFrame(LinkageView view)
    {
        IsPhone = view.Size is PictureSize.Phone;
        Width = IsPhone ? PhoneWidth : FullWidth;
        var points = view.Analysis.Stances.SelectMany(Points).Select(Turned).ToArray();
        var reach = view.Linkage.Carburettors.Max(c => view.Linkage.Shafts[c].Throttle!.BoreMillimetres) / 2;
        var (left, right) = (points.Min(p => p.X) - reach, points.Max(p => p.X) + reach);
        var (top, bottom) = (points.Min(p => p.Y) - reach, points.Max(p => p.Y) + reach);
        var (wide, tall) = IsPhone ? (Width - 40, TallestPhone) : (Width - 40, TallestFull);
        _scale = Math.Min(Largest, Math.Min(wide / (right - left), tall / (bottom - top)));
        _middle = new ChartPoint((left + right) / 2, (top + bottom) / 2);
        HasRoomBeside = IsPhone && Beside(view) is var beside && (left + right) / 2 is var middle
            && (Width / 2 + (Edges(view).Min() - reach - middle) * _scale >= beside || Width / 2 - (Edges(view).Max() + reach - middle) * _scale >= beside);
        var label = HasRoomBeside ? NoLabelHeight : IsPhone ? NarrowLabelHeight : LabelHeight;
        Plan = new Box(0, Top + (IsPhone ? PhoneRow : 0), Width, (bottom - top) * _scale + 2 * label);
        _centre = Plan.Centre;
        Air = new Box(ChartLeft, Plan.Bottom + ChartHeading, IsPhone ? Width - ChartLeft - 10 : Width / 2 - ChartLeft - 18, ChartHeight);
        Angle = IsPhone
            ? Air with { Top = Air.Bottom + AxisHeight + ChartHeading }
            : Air with { Left = Width / 2 + ChartLeft };
        Height = Angle.Bottom + AxisHeight;
    }

    internal bool IsPhone { get; }

    /// <summary>Whether the words of every carburettor find room beside it, as with several in a line on a phone.</summary>
    internal bool HasRoomBeside { get; }

    internal double Width { get; }

    internal double Height { get; }

    /// <summary>Where the plan stands.</summary>
    internal Box Plan { get; }

    /// <summary>Chart of the air against the mean.</summary>
    internal Box Air { get; }

    /// <summary>Chart of the angle against the mean.</summary>
    internal Box Angle { get; }

    /// <summary>Drawing units for so many mm.</summary>
    internal double Length(double millimetres) => millimetres * _scale;

    /// <summary>Where a place of the car stands on the plan.</summary>
    internal ChartPoint At(Place place)
    {
        var turned = Turned(place);
        return new ChartPoint(_centre.X + (turned.X - _middle.X) * _scale, _centre.Y + (turned.Y - _middle.Y) * _scale);
    }

    // Seen from above: front to the left on a wide page, so that the car's left side is below; front up on a phone.
    private ChartPoint Turned(Place place) => IsPhone ? new ChartPoint(-place.Left, -place.Ahead) : new ChartPoint(-place.Ahead, place.Left);

    // How much room the words of the carburettors take.
    private static double Beside(LinkageView view) =>
        Math.Max(WordsWidth, view.Analysis.Names.Max(n => LinkageLabels.NameWidth(n)) + LinkageLabels.Gap);

    // How far left or right the ends of the spindles lie, mm.
    private IEnumerable<double> Edges(LinkageView view) =>
        view.Analysis.Stances.SelectMany(s => view.Linkage.Carburettors.SelectMany(c => new[] { s.Shafts[c].From, s.Shafts[c].To })).Select(p => Turned(p).X);

    private static IEnumerable<Place> Points(Workshop.Linkages.LinkageStance stance) =>
        stance.Shafts.SelectMany(s => new[] { s.From, s.To }).Concat(stance.Levers.SelectMany(l => l.Select(x => x.Ball)));
}
