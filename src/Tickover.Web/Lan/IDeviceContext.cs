namespace Tickover.Web.Lan;

/// <summary>Tells what the request in hand comes from.</summary>
/// <remarks>Ask it within a request. Work of the server's own, outside any request, counts as this machine's.</remarks>
public interface IDeviceContext
{
    /// <summary>The device. Its <see cref="RequestDevice.Name"/> is what belongs in <c>Act.Device</c>.</summary>
    /// <exception cref="InvalidOperationException">The request came from the network and nobody has established from which device.</exception>
    RequestDevice Device { get; }
}
