namespace ShopFit.Web.Features.Studios;

/// <summary>What is wrong with what was written down of a studio.</summary>
public enum StudioProblem
{
    NameMissing,
    NameTooLong,
    WordsTooLong,

    /// <summary>Another studio of the shop has that name.</summary>
    NameTaken,

    /// <summary>A model that the shop does not have.</summary>
    NoSuchModel,
}
