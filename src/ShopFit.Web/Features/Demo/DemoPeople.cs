namespace ShopFit.Web.Features.Demo;

/// <summary>Who works in the demo shop. Everybody may know their passwords.</summary>
internal static class DemoPeople
{
    public static DemoPerson Fitter { get; } = new("fitter", "Wren Hallowick", "satin-and-thread", People.Roles.Fitter);

    public static DemoPerson Manager { get; } = new("manager", "Corin Ashgrove-Pell", "paper-and-ink-well", People.Roles.Manager);
}

/// <summary>Somebody of the demo shop.</summary>
internal sealed record DemoPerson(string UserName, string DisplayName, string Password, string Role);
