namespace ShopFit.Web.Support;

/// <summary>Tests that measure time or start programs of their own: they run one after another, when the rest is done.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class Alone
{
    public const string Name = "alone";
}
