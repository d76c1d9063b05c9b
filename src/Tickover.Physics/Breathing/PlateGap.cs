using Tickover.Physics.Metering;

namespace Tickover.Physics.Breathing;

/// <summary>Free area of a throttle plate with its spindle.</summary>
internal static class PlateGap
{
    internal static double Area(BarrelAirWay way, double openingRadians)
    {
        var d = way.ThrottleBoreMetres;
        var a = way.SpindleDiameterMetres / d;
        var angle = Math.Min(way.ClosedAngleRadians + openingRadians, Math.PI / 2);
        var k = Math.Cos(angle) / Math.Cos(way.ClosedAngleRadians);
        var strip = a * Math.Sqrt(1 - a * a) + Math.Asin(a);
        var full = Math.PI * d * d / 4;
        if (k <= a)
        {
            return full * (1 - 2 / Math.PI * strip);
        }

        var ratio = Math.Min(a / k, 1);
        return full * Math.Max(0, 1 - k + 2 / Math.PI * (a * Math.Sqrt(1 - ratio * ratio) + k * Math.Asin(ratio) - strip));
    }
}
