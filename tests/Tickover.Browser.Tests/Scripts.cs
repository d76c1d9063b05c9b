namespace Tickover.Browser.Tests;

/// <summary>Whether the browser runs scripts.</summary>
public enum Scripts
{
    /// <summary>They run.</summary>
    On,

    /// <summary>They do not.</summary>
    Off,
}
