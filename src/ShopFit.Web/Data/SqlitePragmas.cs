using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace ShopFit.Web.Data;

/// <summary>Sets what SQLite forgets between connections: how long to wait for another writer, and to wait for the disk.</summary>
/// <remarks>NORMAL would be faster, but it can lose a sale that was acknowledged when the power fails.</remarks>
internal sealed class SqlitePragmas : DbConnectionInterceptor
{
    private const string OnEveryOpening = "PRAGMA busy_timeout = 5000; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON;";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = OnEveryOpening;
        command.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = OnEveryOpening;
        await command.ExecuteNonQueryAsync(cancellationToken);
    }
}
