using PdfSharp.UniversalAccessibility;

namespace ShopFit.Sheets.Pdf;

/// <summary>Rows of cells under each other, a hair line below each. It breaks between its rows, and its head stands again on the next page.</summary>
/// <param name="shares">Share of the width of each column.</param>
/// <param name="rows">The rows; the first is the head where there is one.</param>
/// <param name="headed">Whether the first row is a head.</param>
/// <param name="size">Of the type, points.</param>
internal sealed class TableBlock(IReadOnlyList<double> shares, IReadOnlyList<IReadOnlyList<TableCell>> rows, bool headed, double size = Paragraph.ReadingSize) : Block
{
    // Points.
    private const double ColumnGap = 8;
    private const double RowGap = 4;
    private const double Line = 0.5;
    private const double LineGrey = 0.55;

    public override double Height(Typesetter type, double width) => rows.Sum(row => High(type, row, width));

    public override void Draw(Sheet sheet, double x, double y, double width) => sheet.Tagged(PdfBlockLevelElementTag.Table, () =>
    {
        for (var row = 0; row < rows.Count; row++)
        {
            DrawRow(sheet, rows[row], row == 0 && headed, x, y, width);
            y += High(sheet.Type, rows[row], width);
        }
    });

    public override (Block? Fits, Block? Left) Split(Typesetter type, double width, double height)
    {
        var fitting = 0;
        for (; fitting < rows.Count; fitting++)
        {
            height -= High(type, rows[fitting], width);
            if (height < -1e-9)
            {
                break;
            }
        }

        var least = headed ? 2 : 1;
        return fitting == rows.Count ? (this, null)
            : fitting < least ? (null, this)
            : (new TableBlock(shares, [.. rows.Take(fitting)], headed, size), new TableBlock(shares, [.. headed ? rows.Take(1) : [], .. rows.Skip(fitting)], headed, size));
    }

    private void DrawRow(Sheet sheet, IReadOnlyList<TableCell> row, bool head, double x, double y, double width)
    {
        sheet.Tagged(PdfBlockLevelElementTag.TableRow, () =>
        {
            var at = x;
            for (var column = 0; column < row.Count; column++)
            {
                var (cell, wide, left) = (row[column], Wide(column, width), at);
                sheet.Tagged(
                    head ? PdfBlockLevelElementTag.TableHeaderCell : PdfBlockLevelElementTag.TableDataCell,
                    () => sheet.Lines(Lines(sheet.Type, cell, wide), size, left, y + RowGap / 2, Paragraph.Leading(size), cell.Align, wide));
                at += wide + ColumnGap;
            }
        });
        new Rule(Line, LineGrey).Draw(sheet, x, y + High(sheet.Type, row, width) - Line, width);
    }

    private double High(Typesetter type, IReadOnlyList<TableCell> row, double width) =>
        row.Select((cell, column) => Math.Max(1, Lines(type, cell, Wide(column, width)).Count)).Max() * Paragraph.Leading(size) + RowGap + Line;

    private double Wide(int column, double width) => shares[column] * (width - ColumnGap * (shares.Count - 1)) / shares.Sum();

    private IReadOnlyList<TextLine> Lines(Typesetter type, TableCell cell, double width) => type.Break([new TextRun(cell.Text, cell.Bold)], size, width);
}

/// <summary>One cell of a table.</summary>
internal sealed record TableCell(string Text, TextAlign Align = TextAlign.Left, bool Bold = false);
