namespace ShopFit.Web.Features.Catalogue;

/// <summary>The kinds of footwear that a rule of the shop names. All kinds stand with the fit numbers.</summary>
public static class FootwearKinds
{
    public const string Pointe = "pointe";

    public const string DemiPointe = "demi-pointe";
}
