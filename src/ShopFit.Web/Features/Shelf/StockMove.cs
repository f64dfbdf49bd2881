using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Shelf;

/// <summary>Why stock moves, who moves it and under which command: what every ledger line of it says.</summary>
public sealed record StockMove(Actor Actor, Guid CommandId, DateTimeOffset At, string Reason, Guid? SaleId = null);
