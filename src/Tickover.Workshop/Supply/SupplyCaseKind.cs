namespace Tickover.Workshop.Supply;

/// <summary>The three moments a fuel line is looked at.</summary>
public enum SupplyCaseKind
{
    /// <summary>Ticking over.</summary>
    Idle = 0,

    /// <summary>A long pull at full power.</summary>
    FullLoad = 1,

    /// <summary>A hot day, heat under the bonnet, high up.</summary>
    Hot = 2,
}
