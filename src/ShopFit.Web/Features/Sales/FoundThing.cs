namespace ShopFit.Web.Features.Sales;

/// <summary>What a code that was scanned or typed stands for.</summary>
public abstract record FoundThing
{
    private FoundThing()
    {
    }

    /// <summary>Something that can go into a bag without a fitting.</summary>
    public sealed record Thing(Guid ItemId) : FoundThing;

    /// <summary>Shoes, which are sold at a fitting.</summary>
    public sealed record Shoes : FoundThing;

    /// <summary>Something that has no price yet.</summary>
    public sealed record WithoutPrice : FoundThing;
}
