using System.IO.Compression;
using PdfSharp.Pdf;
using PdfSharp.Pdf.IO;

namespace ShopFit.Sheets.Pdf;

/// <summary>Turns a drawn document into the bytes of a small PDF whose every stream is whole.</summary>
/// <remarks>
/// PDFsharp 6.2.4 leaves each Flate stream that it writes without its last block and check sum. Viewers read past that,
/// a checker does not. So the document is saved plain, opened again, and its streams are packed here.
/// </remarks>
internal static class FinishedPdf
{
    public static byte[] Of(PdfDocument drawn)
    {
        Plain(drawn);
        using var first = new MemoryStream();
        drawn.Save(first, closeStream: false);
        first.Position = 0;

        using var document = PdfReader.Open(first, PdfDocumentOpenMode.Modify);
        Plain(document);
        foreach (var item in document.Internals.GetAllObjects())
        {
            // Metadata stays readable to programs that look for it without reading the PDF.
            if (item is PdfDictionary { Stream: { } stream } dictionary
                && !dictionary.Elements.ContainsKey("/Filter")
                && dictionary.Elements.GetName("/Type") != "/Metadata")
            {
                stream.Value = Packed(stream.Value);
                dictionary.Elements.SetName("/Filter", "/FlateDecode");
            }
        }

        foreach (var page in document.Pages)
        {
            // Tab goes through the page in the order of its structure (ISO 32000-1, table 30).
            page.Elements.SetName("/Tabs", "/S");
        }

        using var second = new MemoryStream();
        document.Save(second, closeStream: false);
        return second.ToArray();
    }

    private static void Plain(PdfDocument document)
    {
        document.Options.NoCompression = true;
        document.Options.CompressContentStreams = false;
    }

    private static byte[] Packed(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            zlib.Write(bytes);
        }

        return packed.ToArray();
    }
}
