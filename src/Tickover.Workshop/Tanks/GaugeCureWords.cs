using Tickover.Physics.Gauges;
using Tickover.Workshop.Tanks.Working;

namespace Tickover.Workshop.Tanks;

/// <summary>Cures in the workshop's words.</summary>
public static class GaugeCureWords
{
    /// <summary>What is done.</summary>
    /// <param name="cure">The cure.</param>
    /// <returns>A sentence without its stop.</returns>
    public static string What(GaugeCure cure)
    {
        ArgumentNullException.ThrowIfNull(cure);
        return SenderWords.What(cure);
    }
}
