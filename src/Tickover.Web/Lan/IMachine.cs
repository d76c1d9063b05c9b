namespace Tickover.Web.Lan;

/// <summary>How this machine is called on the workshop's network.</summary>
internal interface IMachine
{
    /// <summary>Its bare name in small letters; null where it has none that can stand in an address.</summary>
    string? Name { get; }

    /// <summary>Its addresses, loopback apart, in a fixed order.</summary>
    IReadOnlyList<OwnAddress> Addresses { get; }
}
