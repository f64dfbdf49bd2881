using System.Security.Claims;

namespace ShopFit.Web.Features.People;

/// <summary>The claims that say who acts, for which shop and from where.</summary>
internal static class ShopClaims
{
    public const string ShopId = "shop";

    public const string DisplayName = "display-name";

    public const string Tablet = "tablet";

    public const string ApiKeyId = "api-key";

    /// <summary>An actor as a principal, for what signs in without a cookie.</summary>
    public static ClaimsPrincipal PrincipalOf(Actor actor, string authenticationType) => new(new ClaimsIdentity(
        [
            new Claim(ClaimTypes.NameIdentifier, actor.PersonId.ToString()),
            new Claim(ClaimTypes.Role, actor.IsManager ? Roles.Manager : Roles.Fitter),
            new Claim(ShopId, actor.ShopId.ToString()),
            new Claim(DisplayName, actor.Name),
            new Claim(Tablet, actor.Tablet),
        ],
        authenticationType));
}
