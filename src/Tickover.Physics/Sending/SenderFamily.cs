namespace Tickover.Physics.Sending;

/// <summary>A family of senders by their resistance at either end.</summary>
/// <param name="EmptyOhms">Resistance at the lower stop, Ω; not below zero.</param>
/// <param name="FullOhms">Resistance at the upper stop, Ω; not below zero, not the same.</param>
public sealed record SenderFamily(double EmptyOhms, double FullOhms)
{
    /// <summary>240 Ω empty, 33 Ω full.</summary>
    public static SenderFamily From240To33 { get; } = new(240, 33);

    /// <summary>73 Ω empty, 10 Ω full.</summary>
    public static SenderFamily From73To10 { get; } = new(73, 10);

    /// <summary>0 Ω empty, 90 Ω full.</summary>
    public static SenderFamily From0To90 { get; } = new(0, 90);

    /// <summary>0 Ω empty, 30 Ω full.</summary>
    public static SenderFamily From0To30 { get; } = new(0, 30);

    /// <summary>10 Ω empty, 180 Ω full.</summary>
    public static SenderFamily From10To180 { get; } = new(10, 180);

    /// <summary>About 275 Ω empty, 20 Ω full, made for gauges with a heated strip.</summary>
    public static SenderFamily From275To20 { get; } = new(275, 20);

    /// <summary>Resistance at a travel of the arm.</summary>
    /// <param name="travel">0 at the lower stop, 1 at the upper.</param>
    /// <returns>Ω.</returns>
    public double At(double travel) => EmptyOhms + (FullOhms - EmptyOhms) * travel; // sending (16)
}
