namespace ShopFit.Web.Features.People;

/// <summary>Remembers on the tablet itself what the shop calls it, whoever signs in.</summary>
internal static class TabletCookie
{
    /// <summary>Most characters of a name.</summary>
    public const int LongestName = 60;

    private const string Name = "shopfit-tablet";

    private static readonly TimeSpan Kept = TimeSpan.FromDays(365);

    public static string Read(HttpContext context) => Tidy(context.Request.Cookies[Name]);

    public static void Write(HttpContext context, string tablet) => context.Response.Cookies.Append(Name, Tidy(tablet), new CookieOptions
    {
        HttpOnly = true,
        IsEssential = true,
        MaxAge = Kept,
        SameSite = SameSiteMode.Lax,
        Secure = context.Request.IsHttps,
    });

    /// <summary>A name as it is kept: without blanks around it, and no longer than allowed.</summary>
    public static string Tidy(string? tablet)
    {
        var name = tablet?.Trim() ?? "";
        return name.Length > LongestName ? name[..LongestName] : name;
    }
}
