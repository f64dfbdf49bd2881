namespace ShopFit.Web.Features.Sales;

/// <summary>Names the words of the vouchers' page: <c>VoucherPageWords.resx</c>.</summary>
public sealed class VoucherPageWords;
