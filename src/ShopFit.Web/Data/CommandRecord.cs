using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace ShopFit.Web.Data;

/// <summary>A command that was done, with how it ended, so that the same command sent again gets the same answer.</summary>
public sealed class CommandRecord : IShopRow
{
    private CommandRecord()
    {
    }

    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    /// <summary>Who gave it; empty for the command line and for another program.</summary>
    public Guid PersonId { get; private set; }

    public string Tablet { get; private set; } = "";

    public string Action { get; private set; } = "";

    public string OutcomeJson { get; private set; } = "";

    public DateTimeOffset DoneAt { get; private set; }

    public static CommandRecord Of(Guid id, Features.People.Actor actor, string action, string outcomeJson, DateTimeOffset doneAt) => new()
    {
        Id = id,
        ShopId = actor.ShopId,
        PersonId = actor.PersonId,
        Tablet = actor.Tablet,
        Action = action,
        OutcomeJson = outcomeJson,
        DoneAt = doneAt,
    };
}

internal sealed class CommandRecordConfiguration : IEntityTypeConfiguration<CommandRecord>
{
    public void Configure(EntityTypeBuilder<CommandRecord> builder)
    {
        builder.ToTable("Commands");
        builder.Property(command => command.Action).HasMaxLength(60);
        builder.Property(command => command.Tablet).HasMaxLength(60);
        builder.HasIndex(command => new { command.ShopId, command.DoneAt });
    }
}
