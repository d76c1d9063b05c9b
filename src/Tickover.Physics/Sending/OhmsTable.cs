using Tickover.Physics.Gauges;

namespace Tickover.Physics.Sending;

/// <summary>Ohms of a float arm against level, tabled for the inner loop: straight between 4096 levels from stop to stop.</summary>
/// <remarks>Off the arcsine by less than 1e-7 of the travel for an arm that swings 45° either way, by 1e-3 at worst for one that swings to the plumb.</remarks>
internal sealed class OhmsTable
{
    private const int Cells = 4096;

    private readonly double[] _ohms = new double[Cells + 1];
    private readonly double _low;
    private readonly double _scale;

    internal OhmsTable(FloatArm arm, SenderFamily family)
    {
        var rest = arm.PivotMetres - arm.RidesMetres;
        _low = rest + arm.LengthMetres * Math.Sin(arm.LowStopRadians);
        var high = rest + arm.LengthMetres * Math.Sin(arm.HighStopRadians);
        _scale = Cells / (high - _low);
        for (var k = 0; k <= Cells; k++)
        {
            _ohms[k] = family.OhmsAt(arm.TravelAt(_low + k / _scale));
        }
    }

    internal double At(double level)
    {
        var x = (level - _low) * _scale;
        if (!(x > 0))
        {
            return _ohms[0];
        }

        if (x >= Cells)
        {
            return _ohms[Cells];
        }

        var i = unchecked((int)x);
        return _ohms[i] + (x - i) * (_ohms[i + 1] - _ohms[i]);
    }
}
