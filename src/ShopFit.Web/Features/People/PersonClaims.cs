using System.Security.Claims;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;

namespace ShopFit.Web.Features.People;

/// <summary>Adds to a signed-in person which shop they act for and how colleagues call them.</summary>
internal sealed class PersonClaims(UserManager<Person> people, RoleManager<IdentityRole<Guid>> roles, IOptions<IdentityOptions> options)
    : UserClaimsPrincipalFactory<Person, IdentityRole<Guid>>(people, roles, options)
{
    protected override async Task<ClaimsIdentity> GenerateClaimsAsync(Person user)
    {
        var identity = await base.GenerateClaimsAsync(user);
        identity.AddClaim(new Claim(ShopClaims.ShopId, user.ShopId.ToString()));
        identity.AddClaim(new Claim(ShopClaims.DisplayName, user.DisplayName));
        return identity;
    }
}
