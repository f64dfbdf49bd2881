using ShopFit.Fitting.Feet;

namespace ShopFit.Web.Features.Fittings;

/// <summary>A word that was tapped where one stood already: for which foot is it?</summary>
public sealed record AskedWord(Trait Trait, int Word);
