using Microsoft.OpenApi;
using Tickover.Web.Frame;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Api;

/// <summary>The description of the API for programs, in OpenAPI, made from the end points themselves.</summary>
internal static class ApiDescription
{
    private const string Version = "v1";

    public static void AddApiDescription(this IServiceCollection services) => services.AddOpenApi(Version, openApi =>
    {
        // The pages are for people; only what stands under the API's root is described.
        openApi.ShouldInclude = end => $"/{end.RelativePath}".StartsWith(Faults.ApiRoot + "/", StringComparison.Ordinal);
        openApi.AddSchemaTransformer((schema, context, _) =>
        {
            // Written by converters, which say nothing of their form.
            if (context.JsonTypeInfo.Type is { IsGenericType: true } type && type.GetGenericTypeDefinition() == typeof(Id<>))
            {
                (schema.Type, schema.Format) = (JsonSchemaType.String, "uuid");
            }
            else if (context.JsonTypeInfo.Type == typeof(Place))
            {
                (schema.Type, schema.Description) = (JsonSchemaType.String, "\"car\", or a kind and a name such as \"barrel:3\"");
            }

            return Task.CompletedTask;
        });
        openApi.AddDocumentTransformer((document, _, _) =>
        {
            document.Info = new OpenApiInfo
            {
                Title = "Tickover",
                Version = "1",
                Description = "What the pages do, for programs. Whatever cannot be done is told as problem details (IETF RFC 9457).",
            };
            return Task.CompletedTask;
        });
    });

    public static void MapApiDescription(this IEndpointRouteBuilder routes) => routes.MapOpenApi("/openapi/{documentName}.json");

    /// <summary>Describes an end point of the API. Every one has to be: a test asks for it.</summary>
    /// <typeparam name="TAnswer">What it answers when all is well.</typeparam>
    /// <param name="route">The end point.</param>
    /// <param name="name">Its name, unique, such as <c>listCars</c>.</param>
    /// <param name="tag">What it is about, such as <c>Cars</c>.</param>
    /// <param name="summary">What it does, one sentence.</param>
    /// <param name="refusals">Statuses it refuses with, besides those of the door: 401, 403 and 429.</param>
    public static RouteHandlerBuilder Describe<TAnswer>(this RouteHandlerBuilder route, string name, string tag, string summary, params IReadOnlyList<int> refusals)
    {
        route.WithName(name).WithTags(tag).WithSummary(summary).Produces<TAnswer>();
        int[] door = [StatusCodes.Status401Unauthorized, StatusCodes.Status403Forbidden, StatusCodes.Status429TooManyRequests];
        foreach (var status in door.Union(refusals))
        {
            route.ProducesProblem(status);
        }

        return route;
    }

    /// <summary>Says which values an end point takes in its query.</summary>
    public static RouteHandlerBuilder WithQuery(this RouteHandlerBuilder route, params IReadOnlyList<(string Name, string About)> values) =>
        route.AddOpenApiOperationTransformer((operation, _, _) =>
        {
            operation.Parameters ??= [];
            foreach (var (name, about) in values)
            {
                operation.Parameters.Add(new OpenApiParameter
                {
                    Name = name,
                    In = ParameterLocation.Query,
                    Description = about,
                    Schema = new OpenApiSchema { Type = JsonSchemaType.String },
                });
            }

            return Task.CompletedTask;
        });
}
