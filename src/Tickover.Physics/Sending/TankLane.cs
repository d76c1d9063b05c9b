namespace Tickover.Physics.Sending;

/// <summary>One tank while the pair is stepped.</summary>
internal sealed class TankLane
{
    private const double Ullage = 0.002;             // part of the capacity that trapped air keeps at least
    private readonly LevelTable _table;
    private readonly bool _blocked;
    private readonly double _outside;
    private readonly double _density;
    private readonly double _air;                    // trapped at the start, m³

    internal TankLane(LinkedTank tank, TwoTanks pair, double volume)
    {
        _table = tank.Table;
        _blocked = tank.Vent == TankVent.Blocked;
        (_outside, _density) = (pair.OutsidePressure, pair.Density);
        Volume = volume;
        _air = Math.Max(Ullage * _table.CapacityCubicMetres, _table.CapacityCubicMetres - volume);
        Refresh();
    }

    internal double Volume;
    internal double Level;
    internal double Slope;                           // of level over volume, 1/m²
    internal double Pressure;                        // of the air over the density, above outside, J/kg
    internal double Stiffness;                       // of that over volume, J/(kg m³)

    internal void Refresh()
    {
        Level = _table.Level(Volume, out Slope);
        if (_blocked)
        {
            Squeeze();
        }
    }

    internal void Fill(double volume)
    {
        Volume += Math.Clamp(volume, 0, Math.Max(0, _table.CapacityCubicMetres - Volume));
        Refresh();
    }

    private void Squeeze()
    {
        var left = Math.Max(Ullage * _table.CapacityCubicMetres, _table.CapacityCubicMetres - Volume);
        Pressure = _outside * (_air / left - 1) / _density; // sending (3)
        Stiffness = _outside * _air / (left * left * _density);
    }
}
