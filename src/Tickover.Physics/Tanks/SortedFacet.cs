using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>A facet with its corners from the lowest up, under one tilt.</summary>
internal readonly struct SortedFacet
{
    private readonly FacetCorners _at;
    private readonly double _area;
    private readonly double _facing;
    private readonly double _share;

    public SortedFacet(in TankFacet facet, SpaceVector origin, SpaceVector up)
    {
        var normal = facet.Normal;
        var length = normal.Length;
        _area = length / 2;
        _facing = length > 0 ? normal.Dot(up) / length : 0;
        _share = facet.Share;
        var (a, b, c) = (facet.A - origin, facet.B - origin, facet.C - origin);
        var (ha, hb, hc) = (up.Dot(a), up.Dot(b), up.Dot(c));
        if (ha > hb)
        {
            ((a, ha), (b, hb)) = ((b, hb), (a, ha));
        }

        if (hb > hc)
        {
            ((b, hb), (c, hc)) = ((c, hc), (b, hb));
        }

        if (ha > hb)
        {
            ((a, ha), (b, hb)) = ((b, hb), (a, ha));
        }

        _at = new FacetCorners(a, b, c, ha, hb, hc);
    }

    public double Lowest => _at.H0;

    public double Highest => _at.H2;

    /// <summary>Adds what lies below a level, everything.</summary>
    public void AddBelow(double level, ref WetMoments sum)
    {
        if (level >= _at.H2)
        {
            sum.Add(_area, _facing, _share, _at);
        }
        else if (level > _at.H1)
        {
            sum.Add(_area, _facing, _share, _at);
            var (s, t) = ((_at.H2 - level) / (_at.H2 - _at.H1), (_at.H2 - level) / (_at.H2 - _at.H0));
            var above = new FacetCorners(_at.P2, Between(_at.P2, _at.P1, s), Between(_at.P2, _at.P0, t), _at.H2, level, level);
            sum.Add(-_area * s * t, _facing, _share, above);
        }
        else if (level > _at.H0)
        {
            var (s, t) = ((level - _at.H0) / (_at.H1 - _at.H0), (level - _at.H0) / (_at.H2 - _at.H0));
            var below = new FacetCorners(_at.P0, Between(_at.P0, _at.P1, s), Between(_at.P0, _at.P2, t), _at.H0, level, level);
            sum.Add(_area * s * t, _facing, _share, below);
        }
    }

    /// <summary>Adds what lies below a level to volume and free surface alone: a fifth of the work.</summary>
    public void AddBelow(double level, ref double volume, ref double surface)
    {
        if (level <= _at.H0 && level < _at.H2)
        {
            return;
        }

        var whole = _area * _facing;
        var height = (_at.H0 + _at.H1 + _at.H2) / 3 - level;
        if (level >= _at.H2)
        {
            volume += whole * height;
            surface -= whole;
        }
        else if (level > _at.H1)
        {
            var above = whole * (_at.H2 - level) * (_at.H2 - level) / ((_at.H2 - _at.H1) * (_at.H2 - _at.H0));
            volume += whole * height - above * (_at.H2 - level) / 3;
            surface -= whole - above;
        }
        else
        {
            var below = whole * (level - _at.H0) * (level - _at.H0) / ((_at.H1 - _at.H0) * (_at.H2 - _at.H0));
            volume += below * (_at.H0 - level) / 3;
            surface -= below;
        }
    }

    private static SpaceVector Between(SpaceVector from, SpaceVector to, double part) => from + part * (to - from);
}
