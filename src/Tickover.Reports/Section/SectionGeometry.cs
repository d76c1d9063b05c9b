using Tickover.Reports.Charts;

namespace Tickover.Reports.Section;

/// <summary>Where everything lies on the drawing. Bore, choke, plate and progression holes are to one scale; the well's heights to another.</summary>
internal sealed class SectionGeometry
{
    // Shown 772 px wide, so a unit is 0.896 px and 16 units are 14 px; room on the right for "3.5 → 4.5 mm" on trial
    internal const double Left = -30;
    internal const double Top = 32;
    internal const double Width = 862;
    internal const double Height = 580;
    internal const double BoreCentre = 446;
    internal const double BoreHalf = 80;
    internal const double WallLeft = BoreCentre - BoreHalf;
    internal const double WallRight = BoreCentre + BoreHalf;
    internal const double Bottom = 560;
    internal const double ChokeTop = 150;
    internal const double ThroatY = 252;
    internal const double ChokeBottom = 372;
    internal const double SpindleY = 466;
    internal const double WellCentre = 296;
    internal const double WellHalf = 22;
    internal const double WellTop = 150;
    internal const double IdleX = 630;
    internal const double PassageX = 554;
    internal const double ScrewY = 516;

    // Lowest place the main jet may take on the drawing, and the largest scale in the well, drawing units a metre
    private const double LowestJet = 392;
    private const double LargestWellScale = 4000;

    // Room the float needs above the level, and the tube below it
    private const double HighestLevel = 230;
    private const double ShortestWell = 20;

    // Stand-ins for figures a hand-built car may lack: common sizes, only the drawing depends on them
    private const double UsualBore = 0.045;
    private const double UsualChoke = 0.036;
    private const double UsualLip = 0.005;
    private const double UsualWellDepth = 0.035;
    private readonly double _closedAngle;
    private readonly double _boreScale;
    private readonly double _wellScale;

    internal SectionGeometry(BarrelSectionView view)
    {
        double Si(string key, double usual) => PartSizes.Si(view.Barrel, key) is { } si && double.IsFinite(si) ? si : usual;
        var bore = Si(PartKeys.ThrottleBore, UsualBore);
        _boreScale = 2 * BoreHalf / bore;
        // A choke as wide as the bore still shows its wall
        ThroatHalf = Math.Clamp(Si(PartKeys.Choke, UsualChoke) / bore, 0.3, 0.96) * BoreHalf;
        _closedAngle = Si("barrel.closedAngle", 0);
        PlateAngle = _closedAngle + Math.Clamp(view.ThrottleDegrees, 0, 90) * Math.PI / 180;
        PlateAngle = Math.Min(PlateAngle, Math.PI / 2);
        SpindleRadius = Math.Max(5, Si("barrel.spindleDiameter", 0.008) / 2 * _boreScale);

        var (lip, depth) = (Si(PartKeys.FloatLevel, UsualLip), Math.Max(0.005, Si("barrel.wellDepth", UsualWellDepth)));
        _wellScale = Math.Min(LargestWellScale, (LowestJet - ThroatY) / Math.Max(0.01, lip + depth));
        // Absurd figures still give a drawing: the form says what is wrong with them
        LevelY = Math.Clamp(ThroatY + lip * _wellScale, HighestLevel, LowestJet - ShortestWell);
        JetTop = Math.Clamp(LevelY + depth * _wellScale, LevelY + ShortestWell, LowestJet);
        var drop = view.Point is { } point && double.IsFinite(point.WellDropMetres) ? point.WellDropMetres : 0;
        WellLevelY = Math.Clamp(LevelY + drop * _wellScale, HighestLevel, JetTop);
    }

    internal double ThroatHalf { get; }

    /// <summary>Angle of the plate from square to the bore, radians.</summary>
    internal double PlateAngle { get; }

    internal double SpindleRadius { get; }

    /// <summary>Fuel level at rest.</summary>
    internal double LevelY { get; }

    /// <summary>Fuel level in the well as computed.</summary>
    internal double WellLevelY { get; }

    /// <summary>Bottom of the well, where the main jet begins.</summary>
    internal double JetTop { get; }

    /// <summary>From spindle to edge: the seated plate touches the wall at its closed angle.</summary>
    internal double PlateReach => BoreHalf / Math.Cos(_closedAngle);

    internal double SeatedEdgeY => SpindleY - PlateReach * Math.Sin(_closedAngle);

    internal double EdgeY => SpindleY - PlateReach * Math.Sin(PlateAngle);

    internal double WellY(double depthMetres) => LevelY + depthMetres * _wellScale;

    internal double OnWell(double metres) => metres * _wellScale;

    /// <summary>Height of a progression hole's centre: upstream is up.</summary>
    internal double HoleY(double positionMetres) => SeatedEdgeY - positionMetres * _boreScale;

    internal double OnBore(double metres) => metres * _boreScale;

    /// <summary>The plate as a bar through the spindle, its right end up when open.</summary>
    internal Polyline Plate(double thickness)
    {
        var (c, s) = (Math.Cos(PlateAngle), Math.Sin(PlateAngle));
        ChartPoint Turned(double along, double across) => new(BoreCentre + along * c - across * s, SpindleY - along * s - across * c);
        var half = thickness / 2;
        return new Polyline(
            [Turned(-PlateReach, -half), Turned(PlateReach, -half), Turned(PlateReach, half), Turned(-PlateReach, half)], Closed: true);
    }
}
