using Microsoft.AspNetCore.Components.Endpoints;

namespace ShopFit.Web.Features.People;

/// <summary>While nobody works here yet, every page leads to the one that makes the first manager.</summary>
internal sealed class FirstStart(RequestDelegate next, PeopleQueries people)
{
    public async Task InvokeAsync(HttpContext context)
    {
        var isPage = context.GetEndpoint()?.Metadata.GetMetadata<ComponentTypeMetadata>() is not null;
        if (isPage && context.Request.Path != PeoplePaths.FirstManager && !await people.IsAnybodyHereAsync(context.RequestAborted))
        {
            context.Response.Redirect(PeoplePaths.FirstManager);
            return;
        }

        await next(context);
    }
}
