namespace ShopFit.Web.Features.People;

/// <summary>What is typed to set the shop up.</summary>
public sealed class FirstManagerForm
{
    /// <summary>Key of the command, made when the form was shown.</summary>
    public Guid CommandId { get; set; }

    public string UserName { get; set; } = "";

    public string DisplayName { get; set; } = "";

    public string Password { get; set; } = "";

    public string PasswordAgain { get; set; } = "";
}
