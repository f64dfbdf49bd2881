namespace ShopFit.Web.Features.People;

/// <summary>What is typed to sign in.</summary>
public sealed class SignInForm
{
    public string UserName { get; set; } = "";

    public string Password { get; set; } = "";

    /// <summary>What the shop calls this tablet; may be empty.</summary>
    public string Tablet { get; set; } = "";
}
