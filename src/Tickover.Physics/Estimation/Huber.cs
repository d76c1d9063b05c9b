namespace Tickover.Physics.Estimation;

/// <summary>The loss of Huber (1964): square up to a limit, straight beyond it. docs/physics/estimation.md (2).</summary>
internal static class Huber
{
    internal static double Loss(double residual, double limit)
    {
        var size = Math.Abs(residual);
        return size <= limit ? 0.5 * residual * residual : limit * (size - 0.5 * limit);
    }

    internal static double Weight(double residual, double limit)
    {
        var size = Math.Abs(residual);
        return size <= limit ? 1 : limit / size;
    }
}
