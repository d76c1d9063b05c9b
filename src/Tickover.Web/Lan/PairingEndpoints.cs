using System.Net;
using Microsoft.AspNetCore.Http.Metadata;
using Tickover.Web.Frame;

namespace Tickover.Web.Lan;

/// <summary>Pages that a tablet not yet let in may open.</summary>
internal static class PairingEndpoints
{
    // A name and a code; nothing longer is read from a stranger.
    private const long LongestPairing = 4096;
    private const string CertificateType = "application/x-x509-ca-cert";

    public static void MapPairing(this IEndpointRouteBuilder routes)
    {
        routes.MapGet(LanDoor.PairPath, (HttpContext context) => Show(context)).ExcludeFromDescription();
        routes.MapPost(LanDoor.PairPath, PairAsync).GuardForm().WithMetadata(new ShortBody(LongestPairing)).ExcludeFromDescription();
        routes.MapPost($"{LanDoor.PairPath}/leave", Leave).GuardForm().ExcludeFromDescription();
        routes.MapGet(LanDoor.TrustPath, (HttpContext context, LanAuthority authority, WebAppOptions options) => options.Lan is { } lan
            ? Pages.Show<TrustPage>(new
            {
                Fingerprint = authority.Fingerprint(),
                Pair = $"https://{context.Request.Host}{LanDoor.PairPath}",
                PlainPair = lan.PlainHttp ? $"http://{context.Request.Host}{LanDoor.PairPath}" : null,
            })
            : NotOpen()).ExcludeFromDescription();
        routes.MapGet(LanDoor.AuthorityPath, (LanAuthority authority, WebAppOptions options) => options.Lan is null
            ? NotOpen()
            : Results.File(authority.Certificate(), CertificateType, "tickover-authority.crt")).ExcludeFromDescription();
    }

    private static async Task<IResult> PairAsync(HttpContext context, PairingCodes codes, DeviceRegister register)
    {
        if (context.Features.Get<RequestDevice>() is not null)
        {
            return Show(context);
        }

        var form = await context.Request.ReadFormAsync();
        var typed = form["name"].ToString();
        if (DeviceName.Read(typed) is not { } name)
        {
            return Show(context, $"Give this tablet a name of 1 to {DeviceName.Longest} characters.", StatusCodes.Status422UnprocessableEntity, typed);
        }

        switch (codes.Take(form["code"], DeviceCheck.Caller(context) ?? IPAddress.None))
        {
            case PairingOutcome.Good:
                DeviceCookie.Give(context, register.Add(name).Token);
                return Results.Redirect(LanDoor.PairPath);
            case PairingOutcome.TooManyTries:
                return Show(context, "Too many wrong codes came from this tablet. Make a new code on the machine.", StatusCodes.Status429TooManyRequests, name);
            default:
                // Wrong, used, too old and never made are told alike.
                return Show(context, "That code is not good. It may be mistyped, used or older than 10 minutes: make a new one on the machine.", StatusCodes.Status403Forbidden, name);
        }
    }

    private static IResult Leave(HttpContext context, DeviceRegister register)
    {
        if (context.Features.Get<RequestDevice>() is { } device && device != RequestDevice.ThisMachine)
        {
            // Off before it is answered, so that its token is good for nothing more; closed after, for this request is open too.
            register.Leave(device.Id);
            DeviceCookie.Take(context);
            context.Response.OnCompleted(() =>
            {
                register.CloseWhatIsOff();
                return Task.CompletedTask;
            });
        }

        return Results.Redirect(LanDoor.PairPath);
    }

    private static IResult Show(HttpContext context, string? problem = null, int status = StatusCodes.Status200OK, string name = "")
    {
        var device = context.Features.Get<RequestDevice>();
        return device == RequestDevice.ThisMachine
            ? Pages.Error(StatusCodes.Status200OK, "This machine needs no pairing.", ["The page Tablets makes the code for a tablet."], "/tablets", "Tablets")
            : Pages.Show<PairPage>(new { Device = device?.Name, Problem = problem, Name = name, IsPlain = !context.Request.IsHttps }, status);
    }

    private static IResult NotOpen() =>
        Pages.NotFound("Tablets are not let in here.", "Start the server with tickover serve --lan.");

    private sealed record ShortBody(long? MaxRequestBodySize) : IRequestSizeLimitMetadata;
}
