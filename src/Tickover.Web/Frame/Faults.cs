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

    // Whatever was reading the body may have wrapped the complaint about it.
    private static int StatusOf(HttpContext context)
    {
        for (var error = context.Features.Get<IExceptionHandlerFeature>()?.Error; error is not null; error = error.InnerException)
        {
            if (error is BadHttpRequestException bad)
            {
                return bad.StatusCode;
            }
        }

        return StatusCodes.Status500InternalServerError;
    }

    /// <summary>Answers that something cannot be: problem details (IETF RFC 9457) under the API, else a page.</summary>
    public static Task SayAsync(HttpContext context, int status, string problem, string whatToDo)
    {
        context.Response.StatusCode = status;
        var answer = context.Request.Path.StartsWithSegments(ApiRoot, StringComparison.OrdinalIgnoreCase)
            ? Results.Problem(title: problem, detail: whatToDo, statusCode: status)
            : Pages.Error(status, problem, [whatToDo]);
        return answer.ExecuteAsync(context);
    }

    private static Task AnswerAsync(HttpContext context, int status)
    {
        var (problem, whatToDo) = Words(status);
        return SayAsync(context, status, problem, whatToDo);
    }

    private static (string Problem, string WhatToDo) Words(int status) => status switch
    {
        StatusCodes.Status400BadRequest => ("The request is not understood.", "Go back and try again."),
        StatusCodes.Status404NotFound => ("No such page.", "Look among the cars."),
        StatusCodes.Status405MethodNotAllowed => ("This address does not do that.", "Go back to the page it belongs to."),
        StatusCodes.Status413PayloadTooLarge => ("That is too long.", "A car document has some twenty lines; send less than 1 MB."),
        StatusCodes.Status415UnsupportedMediaType => ("This kind of content is not taken here.", "Send JSON as application/json."),
        StatusCodes.Status408RequestTimeout => ("That took too long to arrive.", "Send it again."),
        StatusCodes.Status429TooManyRequests => ("That is more than this server takes at once.", "Wait a moment and try again."),
        StatusCodes.Status500InternalServerError => ("Something broke here.", "Nothing was saved by this step. What went wrong stands in the server's output."),
        _ => ($"The server answers {status}.", "Go back and try again."),
    };
}
