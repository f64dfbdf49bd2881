using Microsoft.Data.Sqlite;

namespace ShopFit.Browser.Support;

/// <summary>The shop's books as they lie on disk, read past the program.</summary>
internal sealed class Books(RunningShop shop)
{
    /// <summary>The code of the shoes sold in a fitting, once for each sale.</summary>
    public Task<IReadOnlyList<string>> SoldInAsync(string fittingId) => ListAsync(
        """
        SELECT item.Code FROM Sales sale
        JOIN SaleLines line ON line.SaleId = sale.Id
        JOIN Items item ON item.Id = line.ItemId
        WHERE sale.FittingId = $id AND item.Category = 'shoes'
        """,
        fittingId);

    /// <summary>Every number kept of a trait of a foot ("length right") in a fitting, oldest first.</summary>
    public Task<IReadOnlyList<string>> ReadingsAsync(string fittingId, string traitOfFoot) => ListAsync(
        """
        SELECT Value FROM FittingReadings
        WHERE upper(FittingId || ' ' || Trait || ' ' || Foot) = $id AND WithdrawnAt IS NULL ORDER BY TakenAt
        """,
        $"{fittingId} {traitOfFoot}");

    /// <summary>The code of some size of a kind of footwear.</summary>
    public async Task<string> SomeCodeAsync(string kind) => (await ListAsync(
        """
        SELECT item.Code FROM Items item
        JOIN ShoeSizes size ON size.Id = item.Id
        JOIN ShoeModels model ON model.Id = size.ModelId
        WHERE lower(model.Kind) = lower($id) ORDER BY item.Code LIMIT 1
        """,
        kind)).Single();

    /// <summary>Change and reason of each ledger line of an item, oldest first.</summary>
    public Task<IReadOnlyList<string>> LedgerAsync(string code) => ListAsync(
        """
        SELECT line.Change || ' ' || line.Reason FROM LedgerLines line
        JOIN Items item ON item.Id = line.ItemId
        WHERE item.Code = $id ORDER BY line.At, line.Id
        """,
        code);

    /// <summary>Pieces of an item on hand, all places together.</summary>
    public async Task<int> OnHandAsync(string code) => int.Parse(
        (await ListAsync(
            """
            SELECT SUM(level.OnHand) FROM StockLevels level
            JOIN Items item ON item.Id = level.ItemId
            WHERE item.Code = $id
            """,
            code)).Single(),
        System.Globalization.CultureInfo.InvariantCulture);

    private async Task<IReadOnlyList<string>> ListAsync(string question, string id)
    {
        await using var connection = new SqliteConnection($"Data Source={Path.Combine(shop.Data, "shop.db")};Mode=ReadOnly");
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
#pragma warning disable CA2100 // The questions are the constants above.
        command.CommandText = question;
#pragma warning restore CA2100
        command.Parameters.AddWithValue("$id", id.ToUpperInvariant());
        var rows = new List<string>();
        await using var reader = await command.ExecuteReaderAsync();
        while (await reader.ReadAsync())
        {
            rows.Add(Convert.ToString(reader.GetValue(0), System.Globalization.CultureInfo.InvariantCulture)!);
        }

        return rows;
    }
}
