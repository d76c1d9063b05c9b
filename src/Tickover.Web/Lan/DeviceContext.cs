namespace Tickover.Web.Lan;

/// <summary>Reads the device that <see cref="DeviceCheck"/> left with the request.</summary>
internal sealed class DeviceContext(IHttpContextAccessor accessor) : IDeviceContext
{
    /// <inheritdoc/>
    public RequestDevice Device => accessor.HttpContext is not { } context
        ? RequestDevice.ThisMachine
        : context.Features.Get<RequestDevice>() ?? throw new InvalidOperationException("No device is known for this request.");
}
