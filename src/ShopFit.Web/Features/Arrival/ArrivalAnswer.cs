using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Fitting.Feet;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Arrival;

/// <summary>One thing that was said when a dancer sat down. Withdrawn, never edited.</summary>
public sealed class ArrivalAnswer : IShopRow
{
    /// <summary>Longest answer in somebody's own words.</summary>
    public const int LongestWords = 500;

    private ArrivalAnswer()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid FittingId { get; private set; }

    public DateTimeOffset SaidAt { get; private set; }

    public Guid PersonId { get; private set; }

    public string Tablet { get; private set; } = "";

    /// <summary>Id of one of the <see cref="ArrivalQuestions"/>.</summary>
    public string Question { get; private set; } = "";

    /// <summary>Which foot; null where the question is not about one.</summary>
    public Side? Foot { get; private set; }

    /// <summary>Id of the answer, a day such as "2026-03-14", or words.</summary>
    public string Answer { get; private set; } = "";

    public DateTimeOffset? WithdrawnAt { get; private set; }

    public static ArrivalAnswer Of(Guid id, Actor actor, Guid fittingId, DateTimeOffset saidAt, string question, Side? foot, string answer)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(question);
        ArgumentException.ThrowIfNullOrWhiteSpace(answer);
        return new ArrivalAnswer
        {
            Id = id,
            ShopId = actor.ShopId,
            FittingId = fittingId,
            SaidAt = saidAt,
            PersonId = actor.PersonId,
            Tablet = actor.Tablet,
            Question = question,
            Foot = foot,
            Answer = answer,
        };
    }

    /// <summary>Takes it back; the row stays.</summary>
    public void Withdraw(DateTimeOffset at) => WithdrawnAt ??= at;
}

internal sealed class ArrivalAnswerConfiguration : IEntityTypeConfiguration<ArrivalAnswer>
{
    public void Configure(EntityTypeBuilder<ArrivalAnswer> builder)
    {
        builder.Property(answer => answer.Tablet).HasMaxLength(60);
        builder.Property(answer => answer.Question).HasMaxLength(40);
        builder.Property(answer => answer.Foot).HasConversion<string>().HasMaxLength(10);
        builder.Property(answer => answer.Answer).HasMaxLength(ArrivalAnswer.LongestWords);
        builder.HasIndex(answer => new { answer.ShopId, answer.FittingId, answer.SaidAt });
        builder.HasOne<FittingRecord>().WithMany().HasForeignKey(answer => answer.FittingId).OnDelete(DeleteBehavior.Restrict);
    }
}
