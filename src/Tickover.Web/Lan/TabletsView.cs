using System.Globalization;

namespace Tickover.Web.Lan;

/// <summary>What the page of tablets shows.</summary>
internal sealed record TabletsView
{
    /// <summary>Whether tablets are let in at all.</summary>
    public required bool IsOpen { get; init; }

    /// <summary>Whether plain http is let in too.</summary>
    public required bool PlainHttp { get; init; }

    /// <summary>Names and addresses of this machine with the port, best first.</summary>
    public required IReadOnlyList<string> Hosts { get; init; }

    /// <summary>Fingerprint of the authority.</summary>
    public required string Fingerprint { get; init; }

    /// <summary>The tablets that are in, newest first.</summary>
    public required IReadOnlyList<PairedDevice> Devices { get; init; }

    /// <summary>What was wrong with the files.</summary>
    public required IReadOnlyList<string> Troubles { get; init; }

    /// <summary>A code just made.</summary>
    public string? Code { get; init; }

    /// <summary>What was just done.</summary>
    public string? Notice { get; init; }

    /// <summary>Address of the page that tells how to trust this server.</summary>
    public string Trust => $"http://{Hosts[0]}{LanDoor.TrustPath}";

    /// <summary>Addresses to type on a tablet.</summary>
    public IEnumerable<string> PairAddresses => Hosts.Select(h => $"https://{h}{LanDoor.PairPath}").Concat(PlainHttp ? Hosts.Select(h => $"http://{h}{LanDoor.PairPath}") : []);

    /// <summary>What the QR code holds: the code stands behind the number sign, which no browser sends.</summary>
    public string PairWithCode => $"https://{Hosts[0]}{LanDoor.PairPath}#{Code}";

    /// <summary>A day as people here write it.</summary>
    public static string Day(DateTimeOffset at) => at.ToLocalTime().ToString("d MMMM yyyy", CultureInfo.GetCultureInfo("en-GB"));
}
