using System.Text.Json.Nodes;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Api;

/// <summary>What the OpenAPI document says beyond what the types say.</summary>
internal static class ApiDocument
{
    public static void Describe(OpenApiOptions options)
    {
        options.ShouldInclude = description => description.RelativePath?.StartsWith("api/", StringComparison.Ordinal) == true;
        options.AddDocumentTransformer((document, _, _) =>
        {
            document.Info = new OpenApiInfo
            {
                Title = "ShopFit",
                Version = "v1",
                Description = "Which pairs of a shop are likely to fit two feet. This cannot choose a pointe shoe: a fitter, the teacher and, for pain or injury, a clinician decide.",
            };

            // Whoever reads the document knows where it was found; an address in it would be wrong behind a proxy.
            document.Servers = [];
            document.Components ??= new OpenApiComponents();
            document.Components.SecuritySchemes = new Dictionary<string, IOpenApiSecurityScheme>(StringComparer.Ordinal)
            {
                [ApiKeyScheme.Name] = new OpenApiSecurityScheme
                {
                    Type = SecuritySchemeType.ApiKey,
                    In = ParameterLocation.Header,
                    Name = ApiKeyScheme.Header,
                    Description = "The key that the shop made for this program.",
                },
            };
            document.Security = [new OpenApiSecurityRequirement { [new OpenApiSecuritySchemeReference(ApiKeyScheme.Name, document)] = [] }];
            return Task.CompletedTask;
        });

        // The endpoint reads its body itself. Said in its metadata, the media type would be checked before the key, and
        // a wrong one answered with 401.
        options.AddOperationTransformer(async (operation, context, stop) =>
        {
            if (FitEndpoints.OperationIds.Contains(operation.OperationId))
            {
                var schema = await context.GetOrCreateSchemaAsync(typeof(ShortlistRequest), parameterDescription: null, stop);
                context.Document!.AddComponent(nameof(ShortlistRequest), schema);
                operation.RequestBody = new OpenApiRequestBody
                {
                    Required = true,
                    Description = "At most 64 KB. Unknown members, and members given twice, are refused; a member that is null counts as left out.",
                    Content = new Dictionary<string, OpenApiMediaType>(StringComparer.Ordinal)
                    {
                        [FitEndpoints.Json] = new() { Schema = new OpenApiSchemaReference(nameof(ShortlistRequest), context.Document) },
                    },
                };
            }
        });
        options.AddSchemaTransformer((schema, context, _) =>
        {
            if (context.JsonPropertyInfo?.AttributeProvider?.GetCustomAttributes(typeof(IdListAttribute), inherit: false) is [IdListAttribute list])
            {
                schema.Enum = [.. list.Ids.Select(id => (JsonNode)id)];
            }

            return Task.CompletedTask;
        });
    }
}
