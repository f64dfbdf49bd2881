namespace ShopFit.Web.Features.People;

/// <summary>What people are in the shop.</summary>
public static class Roles
{
    /// <summary>Fits and sells.</summary>
    public const string Fitter = "fitter";

    /// <summary>Does all that a fitter does, and keeps shelf, catalogue, people and settings.</summary>
    public const string Manager = "manager";

    /// <summary>Both.</summary>
    public static IReadOnlyList<string> All { get; } = [Fitter, Manager];
}
