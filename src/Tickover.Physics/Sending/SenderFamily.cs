namespace Tickover.Physics.Sending;

/// <summary>Resistances that a sender has and a gauge expects at empty and full.</summary>
/// <param name="EmptyOhms">At empty, Ω.</param>
/// <param name="FullOhms">At full, Ω; may be lower.</param>
public readonly record struct SenderFamily(double EmptyOhms, double FullOhms)
{
    /// <summary>Families met in the trade, from low to high at empty.</summary>
    public static IReadOnlyList<SenderFamily> Known { get; } =
        [new(0, 30), new(0, 90), new(0, 190), new(10, 180), new(73, 10), new(75, 10), new(90, 0), new(240, 33), new(270, 20)];

    /// <summary>Resistance at a part of the travel.</summary>
    /// <param name="travel">0 at empty, 1 at full.</param>
    /// <returns>Ω.</returns>
    public double At(double travel) => EmptyOhms + (FullOhms - EmptyOhms) * travel;

    /// <summary>Part of the travel that has a resistance.</summary>
    /// <param name="ohms">Ω.</param>
    /// <returns>1; outside 0 to 1 beyond the ends.</returns>
    public double Travel(double ohms) => (ohms - EmptyOhms) / (FullOhms - EmptyOhms);
}
