using System.Security.Claims;
using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Authentication;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Options;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Api;

namespace ShopFit.Web.Features.People;

/// <summary>Signs in another program by the key in its request. Without one: 401, and no page to sign in on.</summary>
public sealed class ApiKeyScheme(
    IOptionsMonitor<AuthenticationSchemeOptions> options,
    ILoggerFactory loggers,
    UrlEncoder encoder,
    IDbContextFactory<ShopDbContext> contexts)
    : AuthenticationHandler<AuthenticationSchemeOptions>(options, loggers, encoder)
{
    /// <summary>Name of the scheme and of the policy that asks for it.</summary>
    public const string Name = "ApiKey";

    /// <summary>Where the key travels.</summary>
    public const string Header = "X-Api-Key";

    /// <summary>What is kept of a key.</summary>
    public static byte[] HashOf(string key) => SHA256.HashData(Encoding.UTF8.GetBytes(key));

    protected override async Task<AuthenticateResult> HandleAuthenticateAsync()
    {
        if (Request.Headers[Header] is not [{ Length: > 0 } given])
        {
            return AuthenticateResult.NoResult();
        }

        // A key has 256 random bits, so its hash may be looked up; the comparison that decides takes the same time for all.
        var hash = HashOf(given);
        await using var db = await contexts.CreateDbContextAsync(Context.RequestAborted);
        var key = await db.ApiKeys
            .IgnoreQueryFilters([ShopDbContext.ShopFilter])
            .AsNoTracking()
            .SingleOrDefaultAsync(known => known.KeyHash == hash && known.RevokedAt == null, Context.RequestAborted);
        if (key is null || !CryptographicOperations.FixedTimeEquals(key.KeyHash, hash))
        {
            return AuthenticateResult.Fail("This key is not known here.");
        }

        var identity = new ClaimsIdentity(
            [
                new Claim(ShopClaims.ShopId, key.ShopId.ToString()),
                new Claim(ShopClaims.ApiKeyId, key.Id.ToString()),
            ],
            Name);
        return AuthenticateResult.Success(new AuthenticationTicket(new ClaimsPrincipal(identity), Name));
    }

    protected override Task HandleChallengeAsync(AuthenticationProperties properties)
    {
        // RFC 9110, 11.6.1: a 401 names the scheme that would open the door.
        Response.Headers.WWWAuthenticate = Name;
        return ApiProblems.NoKey().ExecuteAsync(Context);
    }
}
