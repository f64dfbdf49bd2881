using ShopFit.Web.Features.Catalogue;

namespace ShopFit.Web.Features.Fittings;

/// <summary>What a code that was scanned or typed stands for.</summary>
public abstract record PairByCode
{
    private PairByCode()
    {
    }

    /// <summary>A pair of the kind that is fitted.</summary>
    public sealed record Found(ShoeDetails Shoe) : PairByCode;

    /// <summary>On file, but not a pair of the kind that is fitted.</summary>
    public sealed record Other(string Name) : PairByCode;

    /// <summary>The digits under a barcode, of which one is wrong.</summary>
    public sealed record Misread : PairByCode;

    /// <summary>Nothing on file has it.</summary>
    public sealed record Unknown : PairByCode;
}
