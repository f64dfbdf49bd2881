using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Sales;

/// <summary>One page of the list of sales.</summary>
/// <param name="Count">How many sales there are in all.</param>
/// <param name="Time">The wall clock of the shop.</param>
/// <param name="Days">The days on this page, the latest first.</param>
public sealed record SalesPageRows(int Count, ShopTime Time, IReadOnlyList<SalesDay> Days);

/// <summary>The sales of a day.</summary>
/// <param name="Day">The business day.</param>
/// <param name="Totals">What the whole day comes to, one for each currency; none while somebody searches.</param>
/// <param name="Rows">Its sales on this page, the latest first.</param>
public sealed record SalesDay(DateOnly Day, IReadOnlyList<DayTotal> Totals, IReadOnlyList<SaleRow> Rows);

/// <summary>What the sales of a day come to.</summary>
/// <param name="Taken">What stands: sales that were not taken back, less what was given for goods that came back of them.</param>
/// <param name="GivenBack">What was given for goods that came back of them.</param>
public sealed record DayTotal(Money Taken, Money GivenBack);

/// <summary>One sale as a list shows it.</summary>
public sealed record SaleRow
{
    public required Guid Id { get; init; }

    public required DateTimeOffset SoldAt { get; init; }

    /// <summary>To whom; empty where nobody is on file.</summary>
    public required string Dancer { get; init; }

    public required IReadOnlyList<SoldThing> Things { get; init; }

    public required Money Total { get; init; }

    public required Money Tax { get; init; }

    /// <summary>Who sold.</summary>
    public required string Person { get; init; }

    /// <summary>Number of its receipt; empty where there is none.</summary>
    public required string Receipt { get; init; }

    /// <summary>The take-home sheet, where one was made.</summary>
    public required Guid? SheetPaperId { get; init; }

    /// <summary>Whether it was taken back as a whole.</summary>
    public required bool Voided { get; init; }

    /// <summary>How many pieces of it came back.</summary>
    public required int ReturnedPieces { get; init; }

    /// <summary>What was given for them.</summary>
    public required Money GivenBack { get; init; }
}

/// <summary>The sale that ended a fitting.</summary>
/// <param name="SaleId">The sale.</param>
/// <param name="PaperId">Its receipt.</param>
public sealed record SoldAtFitting(Guid SaleId, Guid PaperId);

/// <summary>So many of something.</summary>
public sealed record SoldThing(int Quantity, string Text);

/// <summary>One sale with everything about it.</summary>
public sealed record SeenSale
{
    public required SaleRow Row { get; init; }

    public required Guid? FittingId { get; init; }

    public required Guid? DancerId { get; init; }

    /// <summary>The wall clock of the shop.</summary>
    public required ShopTime Time { get; init; }

    public required IReadOnlyList<SeenLine> Lines { get; init; }

    /// <summary>All its receipts, in the order in which they were made.</summary>
    public required IReadOnlyList<SeenReceipt> Receipts { get; init; }

    public required DateTimeOffset? VoidedAt { get; init; }

    public required string VoidReason { get; init; }

    /// <summary>Whether it can still be taken back as a whole.</summary>
    public required bool CanBeVoided { get; init; }

    /// <summary>Last day on which goods may come back.</summary>
    public required DateOnly ReturnUntil { get; init; }

    /// <summary>Whether goods may still come back.</summary>
    public required bool CanReturn { get; init; }
}

/// <summary>One line of a sale.</summary>
public sealed record SeenLine(
    Guid Id, string Text, string Category, int Quantity, int Returned, Money UnitPrice, Money Discount, int TaxRateBasisPoints, Money Tax, Money Total)
{
    /// <summary>How many of it have not come back.</summary>
    public int Left => Quantity - Returned;

    /// <summary>Whether it is work, which is not given back.</summary>
    public bool IsWork => Category == Catalogue.ItemCategories.Service;
}

/// <summary>A receipt of a sale.</summary>
/// <param name="Kind">One of <see cref="ReceiptKinds"/>.</param>
/// <param name="Number">Its number.</param>
/// <param name="MadeAt">When.</param>
/// <param name="PaperId">The paper.</param>
public sealed record SeenReceipt(string Kind, string Number, DateTimeOffset MadeAt, Guid PaperId);
