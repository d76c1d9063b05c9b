using Tickover.Web.Frame;

namespace Tickover.Web.Lan;

/// <summary>Pages of the machine itself: who is let in.</summary>
internal static class TabletEndpoints
{
    private const string Tablets = "/tablets";

    public static void MapTablets(this IEndpointRouteBuilder routes)
    {
        var here = routes.MapGroup(Tablets).AddEndpointFilter(OnlyHereAsync).ExcludeFromDescription();
        here.MapGet("", (TabletsDesk desk, HttpContext context, string? done) => Show(desk.Look(context) with { Notice = Words(done) }));
        here.MapPost("/code", (TabletsDesk desk, PairingCodes codes, HttpContext context) =>
        {
            context.Response.Headers.CacheControl = "no-store";
            return Show(desk.Look(context) with { Code = codes.Make() });
        }).GuardForm();
        here.MapPost("/{id}/off", (string id, DeviceRegister register) =>
        {
            register.Revoke(id);
            return Results.Redirect($"{Tablets}?done=one");
        }).GuardForm();
        here.MapPost("/off", (DeviceRegister register) =>
        {
            register.RevokeAll();
            return Results.Redirect($"{Tablets}?done=all");
        }).GuardForm();
        routes.MapPairing();
    }

    private static IResult Show(TabletsView view) => Pages.Show<TabletsPage>(new { Shown = (object)view });

    private static string? Words(string? done) => done switch
    {
        "one" => "The tablet is taken off.",
        "all" => "All tablets are taken off.",
        _ => null,
    };

    private static async ValueTask<object?> OnlyHereAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next) =>
        context.HttpContext.Features.Get<RequestDevice>() == RequestDevice.ThisMachine
            ? await next(context)
            : Pages.Error(StatusCodes.Status403Forbidden, "This page opens on the machine itself only.", ["Go to the machine the server runs on."]);
}
