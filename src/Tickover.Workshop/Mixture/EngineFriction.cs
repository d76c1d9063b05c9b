namespace Tickover.Workshop.Mixture;

/// <summary>Friction of the engine, enough to say where it gives work and where the car drives it.</summary>
internal static class EngineFriction
{
    // Mean pressure in bar over thousands of rpm; Heywood, Internal Combustion Engine Fundamentals (1988), ch. 13, from memory.
    private const double Constant = 0.97, Linear = 0.15, Square = 0.05, BarInPascals = 1e5;

    internal static double MeanPressurePascals(double rpm)
    {
        var n = rpm / 1000;
        return BarInPascals * (Constant + Linear * n + Square * n * n);
    }
}
