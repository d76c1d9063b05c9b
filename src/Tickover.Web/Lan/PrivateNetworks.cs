using System.Net;

namespace Tickover.Web.Lan;

/// <summary>Addresses that exist within a house only.</summary>
internal static class PrivateNetworks
{
    // IETF RFC 1918 (section 3), RFC 3927 (169.254/16), RFC 4193 (fc00::/7), RFC 4291 (fe80::/10).
    public static IReadOnlyList<IPNetwork> All { get; } =
    [
        IPNetwork.Parse("10.0.0.0/8"),
        IPNetwork.Parse("172.16.0.0/12"),
        IPNetwork.Parse("192.168.0.0/16"),
        IPNetwork.Parse("169.254.0.0/16"),
        IPNetwork.Parse("fc00::/7"),
        IPNetwork.Parse("fe80::/10"),
    ];

    /// <summary>Whether an address is of a house's own kind.</summary>
    public static bool Hold(IPAddress address) => All.Any(n => n.Contains(address));

    /// <summary>Whether an address is of a house's own kind, or on a network this machine is on.</summary>
    public static bool IsNear(IPAddress address, IMachine machine) =>
        Hold(address) || machine.Addresses.Any(own => own.SharesNetworkWith(address));
}
