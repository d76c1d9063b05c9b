using System.Net;
using System.Net.NetworkInformation;
using System.Text.RegularExpressions;

namespace Tickover.Web.Lan;

/// <summary>The machine this program runs on, asked anew each time: addresses come and go.</summary>
internal sealed partial class Machine : IMachine
{
    /// <inheritdoc/>
    public string? Name => BareName().Match(Environment.MachineName.ToLowerInvariant()) is { Success: true } match ? match.Groups["name"].Value : null;

    /// <inheritdoc/>
    public IReadOnlyList<OwnAddress> Addresses =>
    [
        .. NetworkInterface.GetAllNetworkInterfaces()
            .Where(n => n.OperationalStatus is OperationalStatus.Up && n.NetworkInterfaceType is not NetworkInterfaceType.Loopback)
            .SelectMany(n => n.GetIPProperties().UnicastAddresses)
            .Where(a => !IPAddress.IsLoopback(a.Address) && !a.Address.IsIPv6LinkLocal)
            .Select(a => new OwnAddress(a.Address, a.PrefixLength))
            .DistinctBy(a => a.Address)
            .OrderBy(a => a.Address.AddressFamily)
            .ThenBy(a => a.Address.ToString(), StringComparer.Ordinal),
    ];

    // A label of a host name (RFC 1123, section 2.1), with the ".local" that some systems add.
    [GeneratedRegex("^(?<name>[a-z0-9](?:[a-z0-9-]{0,61}[a-z0-9])?)(?:\\.local)?$", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 100)]
    private static partial Regex BareName();
}
