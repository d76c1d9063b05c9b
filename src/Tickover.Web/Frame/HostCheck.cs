using System.Net;
using Tickover.Web.Lan;

namespace Tickover.Web.Frame;

/// <summary>Answers only to names that are this machine's.</summary>
/// <remarks>
/// A page from elsewhere can have its own name pointed at this machine and would then count as one of ours. An address in
/// figures cannot be pointed anywhere, so on the workshop's network those are answered, and the machine's own name.
/// </remarks>
internal static class HostCheck
{
    public static void UseHostCheck(this WebApplication app, WebAppOptions options)
    {
        var machine = app.Services.GetRequiredService<IMachine>();
        app.Use((context, next) => IsOurs(context.Request.Host.Host, options.Lan is null ? null : machine)
            ? next(context)
            : Faults.SayAsync(context, StatusCodes.Status400BadRequest, "This server does not answer to that name.", "Use the address that the server names when it starts."));
    }

    private static bool IsOurs(string host, IMachine? onNetwork) =>
        IsLoopback(host) || (onNetwork is not null && (IPAddress.TryParse(host.Trim('[', ']'), out _) || IsName(host, onNetwork.Name)));

    private static bool IsName(string host, string? name) =>
        name is not null
        && (string.Equals(host, name, StringComparison.OrdinalIgnoreCase) || string.Equals(host, $"{name}.local", StringComparison.OrdinalIgnoreCase));

    private static bool IsLoopback(string host) =>
        string.Equals(host, "localhost", StringComparison.OrdinalIgnoreCase)
        || (IPAddress.TryParse(host.Trim('[', ']'), out var ip) && IPAddress.IsLoopback(ip));
}
