namespace Tickover.Workshop.Visits;

/// <summary>How soon a finding must be dealt with.</summary>
public enum Severity
{
    /// <summary>Can hurt someone now.</summary>
    Unsafe,

    /// <summary>Will fail before long.</summary>
    Soon,

    /// <summary>To be looked at again.</summary>
    Watch,
}
