using System.Security.Claims;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;

namespace ShopFit.Web.Features.People;

/// <summary>Looks every minute whether the person on an open page may still be there.</summary>
/// <remarks>A page lives as long as its connection, far longer than a request, so the cookie's own check does not reach it.</remarks>
internal sealed class CircuitSignIn(ILoggerFactory loggers, IServiceScopeFactory scopes, IOptions<IdentityOptions> options)
    : RevalidatingServerAuthenticationStateProvider(loggers)
{
    protected override TimeSpan RevalidationInterval => PeopleFeature.StampInterval;

    protected override async Task<bool> ValidateAuthenticationStateAsync(AuthenticationState authenticationState, CancellationToken cancellationToken)
    {
        await using var scope = scopes.CreateAsyncScope();
        var people = scope.ServiceProvider.GetRequiredService<UserManager<Person>>();
        var person = await people.GetUserAsync(authenticationState.User);
        return person is not null
            && authenticationState.User.FindFirstValue(options.Value.ClaimsIdentity.SecurityStampClaimType) == await people.GetSecurityStampAsync(person);
    }
}
