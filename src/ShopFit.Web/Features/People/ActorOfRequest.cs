using Microsoft.AspNetCore.Components.Authorization;

namespace ShopFit.Web.Features.People;

/// <summary>Lets <see cref="CurrentActor"/> see who sent a plain request, as a circuit lets it see whose page it is.</summary>
internal sealed class ActorOfRequest(RequestDelegate next)
{
    public Task InvokeAsync(HttpContext context, AuthenticationStateProvider authentication)
    {
        ((IHostEnvironmentAuthenticationStateProvider)authentication)
            .SetAuthenticationState(Task.FromResult(new AuthenticationState(context.User)));
        return next(context);
    }
}
