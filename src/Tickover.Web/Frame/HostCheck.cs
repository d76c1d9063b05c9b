using System.Net;

namespace Tickover.Web.Frame;

/// <summary>Answers only to names that are this machine's.</summary>
/// <remarks>
/// A page from elsewhere can have its own name pointed at this machine and would then count as one of ours. An address in
/// figures cannot be pointed anywhere, so on the workshop's network those are answered, and the machine's own name.
/// </remarks>
internal static class HostCheck
{
    public static void UseHostCheck(this IApplicationBuilder app, string address)
    {
        var network = !IsLoopback(HostOf(address));
        app.Use(async (context, next) =>
        {
            if (IsOurs(context.Request.Host.Host, network))
            {
                await next(context);
                return;
            }

            context.Response.StatusCode = StatusCodes.Status400BadRequest;
            await context.Response.WriteAsync("This server does not answer to that name.");
        });
    }

    private static bool IsOurs(string host, bool network) => IsLoopback(host) || (network && (IPAddress.TryParse(host.Trim('[', ']'), out _) || IsMachine(host)));

    private static bool IsMachine(string host) =>
        string.Equals(host, Environment.MachineName, StringComparison.OrdinalIgnoreCase)
        || string.Equals(host, $"{Environment.MachineName}.local", StringComparison.OrdinalIgnoreCase);

    private static bool IsLoopback(string host) =>
        string.Equals(host, "localhost", StringComparison.OrdinalIgnoreCase)
        || (IPAddress.TryParse(host.Trim('[', ']'), out var ip) && IPAddress.IsLoopback(ip));

    private static string HostOf(string address) => new Uri(address
        .Replace("//*", "//0.0.0.0", StringComparison.Ordinal)
        .Replace("//+", "//0.0.0.0", StringComparison.Ordinal)).Host;
}
