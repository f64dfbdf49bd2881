namespace ShopFit.Web.Features.Catalogue;

/// <summary>What kinds of things the shop sells. Tax rates are set by category.</summary>
public static class ItemCategories
{
    public const string Shoes = "shoes";

    public const string Pads = "pads";

    public const string Ribbon = "ribbon";

    public const string Elastic = "elastic";

    public const string Thread = "thread";

    public const string Service = "service";
}
