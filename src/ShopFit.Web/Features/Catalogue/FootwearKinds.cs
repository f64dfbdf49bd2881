using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>The kinds of footwear that a rule of the shop names. All kinds stand with the fit numbers.</summary>
public static class FootwearKinds
{
    public const string Pointe = "pointe";

    public const string DemiPointe = "demi-pointe";

    /// <summary>What is read of the feet for a kind. A shop may move the bands of a kind, not what it asks about.</summary>
    /// <exception cref="ArgumentException">There is no such kind of footwear.</exception>
    public static IReadOnlySet<Trait> TraitsOf(string kind) => FitDefaults.Standard.TraitsOf(kind);

    /// <summary>Whether shoes of a kind have a box, and end in a platform.</summary>
    public static bool HasBox(string kind) => kind is Pointe or DemiPointe;
}
