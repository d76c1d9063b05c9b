namespace Tickover.Physics;

/// <summary>How far an input lies from the range a formula was made for.</summary>
public enum ValidityKind
{
    /// <summary>Within the range the source states.</summary>
    Inside = 0,

    /// <summary>Beyond the stated range, where the formula still behaves; the source gives no uncertainty here.</summary>
    Extrapolated = 1,

    /// <summary>Where the formula has lost its meaning; the value is finite but worth nothing.</summary>
    Outside = 2,
}
