using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Fitting.TryOns;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Fittings;

/// <summary>One pair on two feet, and what was seen. Withdrawn, never edited.</summary>
public sealed class FittingTryOn : IShopRow
{
    private FittingTryOn()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid FittingId { get; private set; }

    public Guid SizeId { get; private set; }

    public DateTimeOffset TriedAt { get; private set; }

    public Guid PersonId { get; private set; }

    public string Tablet { get; private set; } = "";

    /// <summary>True: with these pads. False: with no allowed set. Null: nobody has said.</summary>
    public bool? Fits { get; private set; }

    /// <summary>Pads that were under the feet, as JSON.</summary>
    public string PadsJson { get; private set; } = "[]";

    public string Note { get; private set; } = "";

    /// <summary>Codes of <see cref="TryOnTags"/>, as JSON.</summary>
    public string TagsJson { get; private set; } = "[]";

    /// <summary>Answers to the checks, as JSON.</summary>
    public string AnswersJson { get; private set; } = "[]";

    public DateTimeOffset? WithdrawnAt { get; private set; }

    public static FittingTryOn Of(Guid id, Actor actor, Guid fittingId, Guid sizeId, DateTimeOffset triedAt, bool? fits, string padsJson = "[]", string note = "", IReadOnlyList<string>? tags = null, IReadOnlyList<CheckAnswer>? answers = null) => new()
    {
        Id = id,
        ShopId = actor.ShopId,
        FittingId = fittingId,
        SizeId = sizeId,
        TriedAt = triedAt,
        PersonId = actor.PersonId,
        Tablet = actor.Tablet,
        Fits = fits,
        PadsJson = padsJson,
        Note = note.Trim(),
        TagsJson = JsonSerializer.Serialize(tags ?? []),
        AnswersJson = AnswersAsJson.Write(answers ?? []),
    };

    /// <summary>The tags that are set.</summary>
    public IReadOnlyList<string> Tags() => JsonSerializer.Deserialize<List<string>>(TagsJson) ?? [];

    /// <summary>The answers to the checks.</summary>
    public IReadOnlyList<CheckAnswer> Answers() => AnswersAsJson.Read(AnswersJson);

    /// <summary>The row that takes the place of this one when something more is said of the pair.</summary>
    public FittingTryOn Then(Guid id, Actor actor, DateTimeOffset at, RecordTryOnRequest said) => Of(
        id,
        actor,
        FittingId,
        SizeId,
        at,
        said.Fits ?? Fits,
        said.Pads is null ? PadsJson : PadsAsJson.Write(said.Pads),
        said.Note ?? Note,
        [.. Tags().Union(said.Tags ?? []).Except(said.TagsTakenBack ?? [])],
        CheckAnswers.After(Answers(), said.Answers ?? [], said.AnswersTakenBack ?? []));

    /// <summary>Takes it back; the row stays.</summary>
    public void Withdraw(DateTimeOffset at) => WithdrawnAt ??= at;

    /// <summary>Lets it count again, as if it had never been taken back.</summary>
    public void Restore() => WithdrawnAt = null;
}

internal sealed class FittingTryOnConfiguration : IEntityTypeConfiguration<FittingTryOn>
{
    public void Configure(EntityTypeBuilder<FittingTryOn> builder)
    {
        builder.Property(tryOn => tryOn.Tablet).HasMaxLength(60);
        builder.Property(tryOn => tryOn.Note).HasMaxLength(RecordTryOn.LongestNote);
        builder.Property(tryOn => tryOn.TagsJson).HasDefaultValue("[]");
        builder.Property(tryOn => tryOn.AnswersJson).HasDefaultValue("[]");
        builder.HasIndex(tryOn => new { tryOn.ShopId, tryOn.FittingId, tryOn.TriedAt });
        builder.HasOne<FittingRecord>().WithMany().HasForeignKey(tryOn => tryOn.FittingId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<ShoeSize>().WithMany().HasForeignKey(tryOn => tryOn.SizeId).OnDelete(DeleteBehavior.Restrict);
    }
}
