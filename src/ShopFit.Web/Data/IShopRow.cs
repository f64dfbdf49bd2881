namespace ShopFit.Web.Data;

/// <summary>A row that belongs to one shop and is never seen from another.</summary>
public interface IShopRow
{
    /// <summary>Key of the row, made by the caller.</summary>
    Guid Id { get; }

    /// <summary>The shop that it belongs to.</summary>
    Guid ShopId { get; }
}
