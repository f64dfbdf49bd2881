using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Sales;

/// <summary>Makes a voucher. Only managers do.</summary>
public sealed class MakeVoucher(ShopWrites writes, TimeProvider clock)
{
    /// <summary>Most uses that can be set.</summary>
    public const int MostUses = 100_000;

    public Task<MakeVoucherOutcome> RunAsync(Actor actor, Guid commandId, VoucherTerms terms, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<MakeVoucherOutcome>(actor, commandId, nameof(MakeVoucher), async (db, stop) =>
        {
            if (Check(terms) is { } problem)
            {
                return new MakeVoucherOutcome.Invalid(problem);
            }

            var code = Voucher.CodeOf(terms.Code);
            if (await db.Vouchers.AnyAsync(row => row.Code == code, stop))
            {
                return new MakeVoucherOutcome.Invalid(VoucherProblem.CodeTaken);
            }

            db.Vouchers.Add(Voucher.Of(commandId, actor, clock.GetUtcNow(), terms));
            return new MakeVoucherOutcome.Made(commandId);
        }, cancellationToken);

    private static VoucherProblem? Check(VoucherTerms terms) => terms switch
    {
        _ when Voucher.CodeOf(terms.Code).Length is 0 or > AskedDiscount.LongestCode => VoucherProblem.Code,
        _ when Voucher.CodeOf(terms.Code).Any(sign => !char.IsLetterOrDigit(sign) && sign is not '-') => VoucherProblem.Code,
        _ when terms.PercentBasisPoints is null == terms.AmountMinor is null => VoucherProblem.Value,
        { PercentBasisPoints: < 1 or > LineAmount.WholeInBasisPoints } => VoucherProblem.Value,
        { AmountMinor: < 1 or > SellFittingRequest.MostMinor } => VoucherProblem.Value,
        { LeastTotalMinor: < 0 or > SellFittingRequest.MostMinor } => VoucherProblem.LeastTotal,
        { MostUses: < 1 or > MostUses } => VoucherProblem.Uses,
        _ when terms.ValidTo < terms.ValidFrom => VoucherProblem.Days,
        _ when terms.Categories.Any(category => category.Length is 0 or > 40 || category.Contains(',', StringComparison.Ordinal)) => VoucherProblem.Category,
        _ => null,
    };
}

/// <summary>What is wrong with the terms of a voucher.</summary>
public enum VoucherProblem
{
    /// <summary>The code is empty, too long, or has other signs than letters, digits and dashes.</summary>
    Code,

    /// <summary>There is a voucher with this code already.</summary>
    CodeTaken,

    /// <summary>It gives neither a percentage up to 100 nor an amount.</summary>
    Value,

    /// <summary>The least total cannot be.</summary>
    LeastTotal,

    /// <summary>The number of uses cannot be.</summary>
    Uses,

    /// <summary>It ends before it begins.</summary>
    Days,

    /// <summary>A category cannot be.</summary>
    Category,
}

/// <summary>How making a voucher ended.</summary>
[JsonDerivedType(typeof(Made), "made")]
[JsonDerivedType(typeof(Invalid), "invalid")]
public abstract record MakeVoucherOutcome
{
    private MakeVoucherOutcome()
    {
    }

    /// <summary>It can be used.</summary>
    public sealed record Made(Guid VoucherId) : MakeVoucherOutcome;

    /// <summary>Its terms cannot be.</summary>
    public sealed record Invalid(VoucherProblem Problem) : MakeVoucherOutcome, IRefusal;
}
