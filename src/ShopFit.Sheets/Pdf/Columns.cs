namespace ShopFit.Sheets.Pdf;

/// <summary>Blocks beside each other, each with its share of the width. They stay together on one page.</summary>
internal sealed class Columns(IReadOnlyList<(Block Block, double Share)> columns, double gap) : Block
{
    public override double Height(Typesetter type, double width) => columns.Max(column => column.Block.Height(type, Wide(column.Share, width)));

    public override void Draw(Sheet sheet, double x, double y, double width)
    {
        foreach (var (block, share) in columns)
        {
            block.Draw(sheet, x, y, Wide(share, width));
            x += Wide(share, width) + gap;
        }
    }

    private double Wide(double share, double width) => share * (width - gap * (columns.Count - 1)) / columns.Sum(column => column.Share);
}
