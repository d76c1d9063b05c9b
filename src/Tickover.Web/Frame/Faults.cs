using Microsoft.AspNetCore.Diagnostics;

namespace Tickover.Web.Frame;

/// <summary>What is answered when something goes wrong: a page to people, problem details to programs.</summary>
internal static class Faults
{
    public const string ApiRoot = "/api";

    public static void UseFaultPages(this WebApplication app)
    {
        app.UseExceptionHandler(handler => handler.Run(context => AnswerAsync(context, StatusOf(context))));
        app.UseStatusCodePages(status => AnswerAsync(status.HttpContext, status.HttpContext.Response.StatusCode));
    }

    private static int StatusOf(HttpContext context) =>
        context.Features.Get<IExceptionHandlerFeature>()?.Error is BadHttpRequestException bad
            ? bad.StatusCode
            : StatusCodes.Status500InternalServerError;

    private static Task AnswerAsync(HttpContext context, int status)
    {
        var (problem, whatToDo) = Words(status);
        context.Response.StatusCode = status;
        var answer = context.Request.Path.StartsWithSegments(ApiRoot, StringComparison.Ordinal)
            ? Results.Problem(title: problem, detail: whatToDo, statusCode: status)
            : Pages.Error(status, problem, [whatToDo]);
        return answer.ExecuteAsync(context);
    }

    private static (string Problem, string WhatToDo) Words(int status) => status switch
    {
        StatusCodes.Status400BadRequest => ("The request is not understood.", "Go back and try again."),
        StatusCodes.Status404NotFound => ("No such page.", "Look among the cars."),
        StatusCodes.Status405MethodNotAllowed => ("This address does not do that.", "Go back to the page it belongs to."),
        StatusCodes.Status413PayloadTooLarge => ("That is too long.", "A car document has some twenty lines; send less than 1 MB."),
        StatusCodes.Status415UnsupportedMediaType => ("This kind of content is not taken here.", "Send JSON as application/json."),
        StatusCodes.Status500InternalServerError => ("Something broke here.", "Nothing was saved by this step. What went wrong stands in the server's output."),
        _ => ($"The server answers {status}.", "Go back and try again."),
    };
}
