namespace ShopFit.Web;

/// <summary>Tells the browser what this site never does, and to keep no page that may show who somebody is.</summary>
internal sealed class SafeHeaders(RequestDelegate next)
{
    // Styles may stand in the page, since the kit of components writes them there. Scripts may not.
    private const string ContentPolicy =
        "default-src 'self'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; font-src 'self' data:; "
        + "object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    public Task InvokeAsync(HttpContext context)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = ContentPolicy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), geolocation=(), microphone=()";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        context.Response.OnStarting(KeepNoPage, context);
        return next(context);
    }

    // Files that are the same for everybody say themselves how long they may be kept.
    private static Task KeepNoPage(object state)
    {
        var headers = ((HttpContext)state).Response.Headers;
        var mayBeKept = ((HttpContext)state).GetEndpoint()?.Metadata.GetMetadata<Microsoft.AspNetCore.StaticAssets.StaticAssetDescriptor>() is not null;
        if (!mayBeKept)
        {
            headers.CacheControl = "no-store";
        }

        return Task.CompletedTask;
    }
}
