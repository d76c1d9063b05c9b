using System.Net;
using System.Net.Sockets;

namespace Tickover.Web.Lan;

/// <summary>Gathers what the pages about tablets show.</summary>
internal sealed class TabletsDesk(DeviceRegister register, LanAuthority authority, IMachine machine, WebAppOptions options)
{
    /// <summary>The state of things, as asked for over a connection.</summary>
    public TabletsView Look(HttpContext context)
    {
        var fingerprint = options.Lan is null ? "" : authority.Fingerprint();
        return new TabletsView
        {
            IsOpen = options.Lan is not null,
            PlainHttp = options.Lan is { PlainHttp: true },
            Hosts = Hosts(context.Connection.LocalPort),
            Fingerprint = fingerprint,
            Devices = [.. register.List().Reverse()],
            Troubles = [.. new[] { register.Trouble, authority.Trouble }.OfType<string>()],
        };
    }

    // The address in figures first: every tablet finds it, while ".local" needs multicast DNS on the tablet and on this machine.
    private IReadOnlyList<string> Hosts(int port) =>
    [
        .. machine.Addresses.Select(a => a.Address).Where(PrivateNetworks.Hold).Select(a => $"{Figures(a)}:{port}"),
        .. machine is { Name: { } name, Addresses.Count: > 0 } ? [$"{name}.local:{port}"] : Array.Empty<string>(),
    ];

    private static string Figures(IPAddress address) => address.AddressFamily is AddressFamily.InterNetworkV6 ? $"[{address}]" : address.ToString();
}
