namespace Tickover.Workshop.Linkages;

/// <summary>How far a carburettor's air may stand from the mean of all.</summary>
/// <remarks>
/// Common practice for air per barrel: ±10 % at idle, where a hair of plate angle is much, ±5 % off idle. Off idle begins where the plates
/// pass twice their idle area.
/// </remarks>
/// <param name="IdlePart">At idle.</param>
/// <param name="OffIdlePart">Off idle.</param>
public sealed record LinkageLimits(double IdlePart = 0.10, double OffIdlePart = 0.05)
{
    /// <summary>Open area over idle area at which off idle begins.</summary>
    public const double OffIdleFrom = 2;

    /// <summary>Where these limits come from, for the page.</summary>
    public const string Origin = "Common practice: ±10 % of the mean at idle, ±5 % once the plates pass twice their idle area.";
}
