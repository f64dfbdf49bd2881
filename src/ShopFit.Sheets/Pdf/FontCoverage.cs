using System.Buffers.Binary;
using System.Collections;
using System.Text;

namespace ShopFit.Sheets.Pdf;

/// <summary>Which characters of the Basic Multilingual Plane a TrueType font has a glyph for.</summary>
/// <remarks>Reads the font's <c>cmap</c> table, subtable format 4 (ISO/IEC 14496-22, Open Font Format, 5.2.1).</remarks>
internal sealed class FontCoverage
{
    private const int Plane = 0x10000;
    private const uint CmapTag = 0x636D6170;
    private readonly BitArray _covered;

    private FontCoverage(BitArray covered) => _covered = covered;

    public bool Covers(Rune rune) => rune.IsBmp && _covered[rune.Value];

    public FontCoverage And(FontCoverage other) => new(new BitArray(_covered).And(other._covered));

    public static FontCoverage Of(ReadOnlySpan<byte> font)
    {
        var cmap = font[Table(font, CmapTag)..];
        var covered = new BitArray(Plane);
        var subtables = U16(cmap, 2);
        for (var i = 0; i < subtables; i++)
        {
            var subtable = cmap[(int)BinaryPrimitives.ReadUInt32BigEndian(cmap[(4 + 8 * i + 4)..])..];
            if (U16(subtable, 0) == 4)
            {
                ReadSegments(subtable, covered);
            }
        }

        return new(covered);
    }

    private static void ReadSegments(ReadOnlySpan<byte> subtable, BitArray covered)
    {
        var doubledSegments = U16(subtable, 6);
        const int endCodes = 14;
        var startCodes = endCodes + doubledSegments + 2;
        var deltas = startCodes + doubledSegments;
        var offsets = deltas + doubledSegments;
        for (var s = 0; s < doubledSegments; s += 2)
        {
            var start = U16(subtable, startCodes + s);
            var end = U16(subtable, endCodes + s);
            var delta = U16(subtable, deltas + s);
            var offset = U16(subtable, offsets + s);
            for (var code = start; code <= end && code < Plane - 1; code++)
            {
                var glyph = offset == 0
                    ? code + delta
                    : U16(subtable, offsets + s + offset + 2 * (code - start)) is var listed and not 0 ? listed + delta : 0;
                covered[code] |= glyph % Plane != 0;
            }
        }
    }

    private static int Table(ReadOnlySpan<byte> font, uint tag)
    {
        var tables = U16(font, 4);
        for (var i = 0; i < tables; i++)
        {
            var record = font[(12 + 16 * i)..];
            if (BinaryPrimitives.ReadUInt32BigEndian(record) == tag)
            {
                return (int)BinaryPrimitives.ReadUInt32BigEndian(record[8..]);
            }
        }

        throw new InvalidDataException("The font has no cmap table.");
    }

    private static int U16(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt16BigEndian(bytes[at..]);
}
