namespace ShopFit.Sheets.Pdf;

/// <summary>Blocks under each other, each with a gap before it (none before the first). Points.</summary>
internal sealed class Stack(IReadOnlyList<(Block Block, double GapBefore)> items) : Block
{
    public bool IsEmpty => items.Count == 0;

    public static Stack Of(double gap, params IEnumerable<Block?> blocks) => new([.. blocks.OfType<Block>().Select(block => (block, gap))]);

    public override double Height(Typesetter type, double width) =>
        items.Select((item, i) => item.Block.Height(type, width) + (i == 0 ? 0 : item.GapBefore)).Sum();

    public override void Draw(Sheet sheet, double x, double y, double width)
    {
        for (var i = 0; i < items.Count; i++)
        {
            y += i == 0 ? 0 : items[i].GapBefore;
            items[i].Block.Draw(sheet, x, y, width);
            y += items[i].Block.Height(sheet.Type, width);
        }
    }

    public override (Block? Fits, Block? Left) Split(Typesetter type, double width, double height)
    {
        var fitting = new List<(Block Block, double GapBefore)>();
        for (var i = 0; i < items.Count; i++)
        {
            height -= fitting.Count == 0 ? 0 : items[i].GapBefore;
            var (fits, left) = items[i].Block.Split(type, width, height);
            if (fits is not null)
            {
                fitting.Add((fits, items[i].GapBefore));
                height -= fits.Height(type, width);
            }

            if (left is not null)
            {
                List<(Block Block, double GapBefore)> rest = [(left, items[i].GapBefore), .. items.Skip(i + 1)];
                while (fits is null && fitting.Count > 0 && fitting[^1].Block.LeadsOn)
                {
                    rest.Insert(0, fitting[^1]);
                    fitting.RemoveAt(fitting.Count - 1);
                }

                return (Some(fitting), new Stack(rest));
            }
        }

        return (this, null);
    }

    private static Stack? Some(List<(Block, double)> fitting) => fitting.Count == 0 ? null : new Stack(fitting);
}
