using System.Security.Claims;
using Microsoft.AspNetCore.Components.Authorization;

namespace ShopFit.Web.Features.People;

/// <summary>Who is acting in this page, circuit or request.</summary>
public sealed class CurrentActor(AuthenticationStateProvider authentication)
{
    /// <summary>The actor, or null where nobody has signed in.</summary>
    public async Task<Actor?> FindAsync()
    {
        var user = (await authentication.GetAuthenticationStateAsync()).User;
        return user.Identity?.IsAuthenticated == true && Guid.TryParse(user.FindFirstValue(ShopClaims.ShopId), out var shopId)
            ? new Actor(
                Guid.TryParse(user.FindFirstValue(ClaimTypes.NameIdentifier), out var personId) ? personId : Guid.Empty,
                shopId,
                user.FindFirstValue(ShopClaims.DisplayName) ?? "",
                user.IsInRole(Roles.Manager),
                user.FindFirstValue(ShopClaims.Tablet) ?? "")
            : null;
    }

    /// <summary>The actor of a page that only people who have signed in can reach.</summary>
    /// <exception cref="NotPermittedException">Nobody has signed in.</exception>
    public async Task<Actor> GetAsync() => await FindAsync() ?? throw new NotPermittedException("Nobody has signed in.");
}
