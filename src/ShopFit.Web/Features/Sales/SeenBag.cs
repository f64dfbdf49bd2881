namespace ShopFit.Web.Features.Sales;

/// <summary>A bag without a fitting as its page goes on with it.</summary>
/// <param name="Wish">What is in it.</param>
/// <param name="DancerId">For whom; null where nobody was named.</param>
/// <param name="Dancer">Her name; empty where nobody was named.</param>
/// <param name="SaleId">The sale that it became; null while it is open.</param>
public sealed record SeenBag(BagWish Wish, Guid? DancerId, string Dancer, Guid? SaleId);

/// <summary>A bag that waits to be sold.</summary>
/// <param name="DraftId">Its key.</param>
/// <param name="KeptAt">When something was last changed in it, on the wall clock of the shop.</param>
/// <param name="Dancer">For whom; empty where nobody was named.</param>
/// <param name="Pieces">How many things are in it.</param>
public sealed record WaitingBag(Guid DraftId, string KeptAt, string Dancer, int Pieces);
