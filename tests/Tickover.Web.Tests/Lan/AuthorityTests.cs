using System.Net;
using System.Net.Http.Headers;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Tickover.Web.Lan;

namespace Tickover.Web.Tests.Lan;

/// <summary>Items are of OWASP ASVS 5.0, chapter V12, from memory. Certificates after IETF RFC 5280.</summary>
public sealed class AuthorityTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("tickover-authority-").FullName;
    private readonly InventedMachine _machine = new();
    private readonly Clock _clock = new();

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    // 12.1.1 and 12.2.1: TLS 1.2 or later on the network.
    [Fact]
    public async Task A_client_that_trusts_this_authority_alone_is_answered_and_one_that_does_not_is_not()
    {
        await using var app = await LanApp.StartOnPortAsync();
        using var plain = new HttpClient { BaseAddress = new Uri($"http://127.0.0.1:{app.Port}") };
        using var authority = X509CertificateLoader.LoadCertificate(await plain.GetByteArrayAsync("/authority.crt", TestContext.Current.CancellationToken));
        using var trusting = Client(app.Port, authority);
        using var other = CertificateMaking.Authority("saltmarsh", DateTimeOffset.UtcNow);
        using var mistrusting = Client(app.Port, other);

        using var answer = await trusting.GetAsync(new Uri($"https://saltmarsh.local:{app.Port}/physics"), TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        await Assert.ThrowsAsync<HttpRequestException>(() => mistrusting.GetAsync(new Uri($"https://saltmarsh.local:{app.Port}/physics"), TestContext.Current.CancellationToken));
        await Assert.ThrowsAsync<HttpRequestException>(() => trusting.GetAsync(new Uri($"https://elsewhere.local:{app.Port}/physics"), TestContext.Current.CancellationToken));
    }

    // 12.1.1
    [Fact]
    public async Task Old_versions_of_TLS_are_not_spoken()
    {
        await using var app = await LanApp.StartOnPortAsync();
        using var client = new TcpClient();
        await client.ConnectAsync(IPAddress.Loopback, app.Port, TestContext.Current.CancellationToken);

        // RFC 4346 and RFC 8446: a ClientHello that offers TLS 1.1 at most, without extensions. The answer to it is an alert.
        byte[] hello = [22, 3, 1, 0, 45, 1, 0, 0, 41, 3, 2, .. new byte[32], 0, 0, 2, 0xC0, 0x13, 1, 0];
        await client.GetStream().WriteAsync(hello, TestContext.Current.CancellationToken);
        var answer = new byte[1];
        var read = await client.GetStream().ReadAsync(answer, TestContext.Current.CancellationToken);

        Assert.True(read == 0 || answer[0] == 21, $"{read} bytes, first {answer[0]}");
    }

    // 4.1.x, from memory: what is too long is refused before it is read.
    [Theory]
    [InlineData("/api/cars/none/trial", "application/json", 5 * 1024 * 1024, "application/problem+json")]
    [InlineData("/theme", "application/x-www-form-urlencoded", 5 * 1024 * 1024, "text/html")]
    [InlineData("/pair", "application/x-www-form-urlencoded", 8 * 1024, "text/html")]
    public async Task A_body_too_long_is_refused(string address, string type, int length, string expected)
    {
        await using var app = await LanApp.StartOnPortAsync();
        // by itself the client waits a second for leave to send, and a server that is slow to say no then hangs up on it
        using var patient = new SocketsHttpHandler { Expect100ContinueTimeout = TimeSpan.FromSeconds(30) };
        using var client = new HttpClient(patient) { BaseAddress = new Uri($"http://127.0.0.1:{app.Port}") };
        using var content = new ByteArrayContent(Enumerable.Repeat((byte)'a', length).ToArray());
        content.Headers.ContentType = new MediaTypeHeaderValue(type);
        client.DefaultRequestHeaders.ExpectContinue = true;

        using var answer = await client.PostAsync(new Uri(address, UriKind.Relative), content, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
        Assert.Equal(expected, answer.Content.Headers.ContentType!.MediaType);
    }

    [Fact]
    public void The_authority_is_bound_to_one_step_and_to_names_of_the_house()
    {
        using var authority = CertificateMaking.Authority("saltmarsh", _clock.GetUtcNow());
        using var own = CertificateMaking.Server(authority, ["saltmarsh", "saltmarsh.local"], [IPAddress.Parse("192.168.7.2")], _clock.GetUtcNow());
        using var foreign = CertificateMaking.Server(authority, ["elsewhere.example"], [], _clock.GetUtcNow());
        using var outside = CertificateMaking.Server(authority, [], [IPAddress.Parse("203.0.113.9")], _clock.GetUtcNow());
        var limits = authority.Extensions.OfType<X509BasicConstraintsExtension>().Single();

        Assert.Equal((true, true, 0), (limits.CertificateAuthority, limits.Critical, limits.PathLengthConstraint));
        Assert.Equal(X509KeyUsageFlags.KeyCertSign, authority.Extensions.OfType<X509KeyUsageExtension>().Single().KeyUsages);
        Assert.True(Builds(own, authority));
        Assert.False(Builds(foreign, authority));
        Assert.False(Builds(outside, authority));
        Assert.InRange((own.NotAfter - own.NotBefore).TotalDays, 300, 398);
        Assert.Equal(ECCurve.NamedCurves.nistP256.Oid.Value, own.GetECDsaPublicKey()!.ExportParameters(false).Curve.Oid.Value);
    }

    [Fact]
    public void The_certificate_is_kept_and_renewed_when_its_end_is_near_or_the_machine_is_called_otherwise()
    {
        using var authority = new LanAuthority(_folder, _machine, _clock);
        var first = authority.ForConnection().Thumbprint;
        using var restarted = new LanAuthority(_folder, _machine, _clock);
        Assert.Equal(first, restarted.ForConnection().Thumbprint);

        _machine.Addresses = [new(IPAddress.Parse("192.168.7.3"), 24)];
        _clock.Pass(TimeSpan.FromMinutes(2));
        var moved = authority.ForConnection();
        Assert.NotEqual(first, moved.Thumbprint, StringComparer.Ordinal);
        Assert.Contains(IPAddress.Parse("192.168.7.3"), moved.Extensions.OfType<X509SubjectAlternativeNameExtension>().Single().EnumerateIPAddresses());

        var before = authority.Fingerprint();
        _clock.Pass(TimeSpan.FromDays(200));
        Assert.Equal(moved.Thumbprint, authority.ForConnection().Thumbprint);
        _clock.Pass(TimeSpan.FromDays(110));
        Assert.NotEqual(moved.Thumbprint, authority.ForConnection().Thumbprint, StringComparer.Ordinal);
        Assert.Equal(before, authority.Fingerprint());
    }

    [Fact]
    public void A_machine_renamed_keeps_its_authority_and_is_known_by_its_local_name()
    {
        using var authority = new LanAuthority(_folder, _machine, _clock);
        var before = authority.Fingerprint();
        _machine.Name = "gannet";

        var names = authority.ForConnection().Extensions.OfType<X509SubjectAlternativeNameExtension>().Single().EnumerateDnsNames();

        Assert.Equal("gannet.local", Assert.Single(names));
        Assert.Equal(before, authority.Fingerprint());
    }

    [Theory]
    [InlineData("")]
    [InlineData("not a certificate")]
    [InlineData("-----BEGIN CERTIFICATE-----\nAAAA\n-----END CERTIFICATE-----\n")]
    public void A_damaged_authority_is_kept_aside_a_new_one_made_and_said(string damage)
    {
        using var first = new LanAuthority(_folder, _machine, _clock);
        var before = first.Fingerprint();
        File.WriteAllText(Path.Combine(_folder, "authority.pem"), damage);
        using var second = new LanAuthority(_folder, _machine, _clock);

        var after = second.Fingerprint();

        Assert.NotEqual(before, after, StringComparer.Ordinal);
        Assert.Contains("Every tablet has to be told to trust the new one", second.Trouble, StringComparison.Ordinal);
        Assert.Single(Directory.GetFiles(_folder, "authority.pem.damaged-*"));
        Assert.True(Builds(second.ForConnection(), X509CertificateLoader.LoadCertificate(second.Certificate())));
    }

    [Fact]
    public void Keys_are_readable_by_their_owner_only()
    {
        using var authority = new LanAuthority(_folder, _machine, _clock);
        authority.ForConnection();

        Assert.DoesNotContain("PRIVATE", Convert.ToBase64String(authority.Certificate()), StringComparison.Ordinal);
        foreach (var file in OperatingSystem.IsWindows() ? [] : Directory.GetFiles(_folder))
        {
            Assert.True(OperatingSystem.IsWindows() || File.GetUnixFileMode(file) is (UnixFileMode.UserRead | UnixFileMode.UserWrite));
        }
    }

    private bool Builds(X509Certificate2 server, X509Certificate2 authority)
    {
        using var chain = new X509Chain { ChainPolicy = Policy(authority) };
        chain.ChainPolicy.VerificationTime = _clock.GetUtcNow().UtcDateTime;
        return chain.Build(server);
    }

    private static X509ChainPolicy Policy(X509Certificate2 authority) => new()
    {
        TrustMode = X509ChainTrustMode.CustomRootTrust,
        CustomTrustStore = { authority },
        RevocationMode = X509RevocationMode.NoCheck,
        DisableCertificateDownloads = true,
    };

    // Trusts one authority and finds every name on this machine.
    private static HttpClient Client(int port, X509Certificate2 authority) => new(new SocketsHttpHandler
    {
        ConnectCallback = async (_, token) =>
        {
            var socket = new Socket(SocketType.Stream, ProtocolType.Tcp);
            await socket.ConnectAsync(IPAddress.Loopback, port, token);
            return new NetworkStream(socket, ownsSocket: true);
        },
        SslOptions = { CertificateChainPolicy = Policy(authority) },
    });
}
