using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.EntityFrameworkCore.Storage;

namespace ShopFit.Web.Data;

/// <summary>Writes many new rows of one table with one prepared statement.</summary>
/// <remarks>
/// The change tracker makes a statement for every row, which is what an import of 20,000 sizes spends its time on. Columns
/// and conversions are read from the same model, so that the rows are those that it would have written.
/// </remarks>
internal static class BulkRows
{
    /// <summary>Inserts rows in the transaction that is open. What they refer to must be saved already.</summary>
    public static async Task AddAsync<TRow>(ShopDbContext db, IEnumerable<TRow> rows, CancellationToken cancellationToken)
        where TRow : class, IShopRow
    {
        var type = db.Model.FindEntityType(typeof(TRow))!;
        var table = StoreObjectIdentifier.Table(type.GetTableName()!, type.GetSchema());
        var properties = type.GetFlattenedProperties().ToList();
        var sql = db.GetService<ISqlGenerationHelper>();

        await using var command = db.Database.GetDbConnection().CreateCommand();
        command.Transaction = db.Database.CurrentTransaction!.GetDbTransaction();
        var columns = properties.Select((property, index) => new Column(
            property,
            property.GetRelationalTypeMapping().CreateParameter(command, $"p{index}", value: null, property.IsNullable))).ToList();
        foreach (var column in columns)
        {
            command.Parameters.Add(column.Parameter);
        }

        var names = string.Join(", ", properties.Select(property => sql.DelimitIdentifier(property.GetColumnName(table)!)));
        var places = string.Join(", ", properties.Select((_, index) => sql.GenerateParameterNamePlaceholder($"p{index}")));
#pragma warning disable CA2100 // Table and columns come from the model, and values go as parameters.
        command.CommandText = $"INSERT INTO {sql.DelimitIdentifier(table.Name, table.Schema)} ({names}) VALUES ({places})";
#pragma warning restore CA2100

        foreach (var row in rows)
        {
            foreach (var column in columns)
            {
                column.Take(row);
            }

            await command.ExecuteNonQueryAsync(cancellationToken);
        }
    }

    private sealed record Column(IProperty Property, DbParameter Parameter)
    {
        private readonly Func<object?, object?>? _convert = Property.GetTypeMapping().Converter?.ConvertToProvider;

        public void Take(object row)
        {
            var value = Property.GetGetter().GetClrValueUsingContainingEntity(row);
            Parameter.Value = (_convert is null ? value : _convert(value)) ?? DBNull.Value;
        }
    }
}
