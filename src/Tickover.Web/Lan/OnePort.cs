using System.Security.Authentication;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace Tickover.Web.Lan;

/// <summary>One port that speaks TLS to whoever opens with TLS, and plain http to the rest.</summary>
/// <remarks>
/// So there is one address to remember, this machine's own pages go on in plain http, and a tablet on which somebody typed
/// the address without https still lands on the page that tells how to go on.
/// </remarks>
internal static class OnePort
{
    // IETF RFC 8446, section 5.1: the content type of a handshake record, the first byte of every TLS connection.
    private const byte Handshake = 22;
    private static readonly TimeSpan FirstByteWithin = TimeSpan.FromSeconds(10);

    /// <summary>Listens on every address of the machine.</summary>
    public static void ListenToNetwork(this KestrelServerOptions kestrel, int port, Func<LanAuthority> authority)
    {
        kestrel.ListenAnyIP(port, listen =>
        {
            ConnectionDelegate? plain = null;
            listen.Use(tls => connection => SortAsync(connection, tls, plain!));
            listen.UseHttps(https =>
            {
                https.SslProtocols = SslProtocols.Tls12 | SslProtocols.Tls13;
                https.ServerCertificateSelector = (_, _) => authority().ForConnection();
            });

            // Registered after TLS, so what it is handed is the server behind TLS: the way for plain connections.
            listen.Use(server =>
            {
                plain = server;
                return server;
            });
        });
    }

    private static async Task SortAsync(ConnectionContext connection, ConnectionDelegate tls, ConnectionDelegate plain)
    {
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(connection.ConnectionClosed);
        limit.CancelAfter(FirstByteWithin);
        bool isTls;
        try
        {
            var read = await connection.Transport.Input.ReadAsync(limit.Token);
            if (read.Buffer.IsEmpty)
            {
                return;
            }

            isTls = read.Buffer.FirstSpan[0] == Handshake;
            connection.Transport.Input.AdvanceTo(read.Buffer.Start);
        }
        catch (Exception e) when (e is OperationCanceledException or IOException)
        {
            // Said nothing in time, or went away: there is nobody to answer.
            return;
        }

        await (isTls ? tls : plain)(connection);
    }
}
