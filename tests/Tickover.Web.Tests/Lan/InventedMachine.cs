using System.Net;
using Tickover.Web.Lan;

namespace Tickover.Web.Tests.Lan;

/// <summary>A machine on an invented network.</summary>
internal sealed class InventedMachine : IMachine
{
    public string? Name { get; set; } = "saltmarsh";

    public IReadOnlyList<OwnAddress> Addresses { get; set; } = [new(IPAddress.Parse("192.168.7.2"), 24)];
}
