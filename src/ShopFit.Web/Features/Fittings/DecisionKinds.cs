namespace ShopFit.Web.Features.Fittings;

/// <summary>How a fitting can end.</summary>
public static class DecisionKinds
{
    public const string Sold = "sold";

    public const string Order = "order";

    public const string ComeBack = "come-back";

    public const string NotToday = "not-today";
}
