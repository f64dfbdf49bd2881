using System.Globalization;
using System.IO.Compression;
using System.Text;

namespace ShopFit.Sheets.Support;

/// <summary>A grey picture, one byte a pixel, kept as a binary PGM file (the P5 format of Netpbm), packed by gzip where it is kept long.</summary>
internal sealed record GreyPicture(int Width, int Height, byte[] Pixels)
{
    public static GreyPicture Read(string file)
    {
        var bytes = Bytes(file);
        var at = 0;
        string Next()
        {
            var from = at;
            while (!char.IsWhiteSpace((char)bytes[at]))
            {
                at++;
            }

            return Encoding.ASCII.GetString(bytes, from, at++ - from);
        }

        Assert.Equal("P5", Next());
        var width = int.Parse(Next(), CultureInfo.InvariantCulture);
        var height = int.Parse(Next(), CultureInfo.InvariantCulture);
        Assert.Equal("255", Next());
        return new(width, height, bytes[at..]);
    }

    public void WritePacked(string file)
    {
        using var packed = new GZipStream(File.Create(file), CompressionLevel.SmallestSize);
        packed.Write(Encoding.ASCII.GetBytes($"P5\n{Width} {Height}\n255\n"));
        packed.Write(Pixels);
    }

    /// <summary>Each pixel the mean of itself and its neighbours one pixel round.</summary>
    public GreyPicture Blurred()
    {
        var blurred = new byte[Pixels.Length];
        for (var y = 0; y < Height; y++)
        {
            for (var x = 0; x < Width; x++)
            {
                int sum = 0, count = 0;
                for (var v = Math.Max(0, y - 1); v <= Math.Min(Height - 1, y + 1); v++)
                {
                    for (var u = Math.Max(0, x - 1); u <= Math.Min(Width - 1, x + 1); u++)
                    {
                        sum += Pixels[v * Width + u];
                        count++;
                    }
                }

                blurred[y * Width + x] = (byte)(sum / count);
            }
        }

        return this with { Pixels = blurred };
    }

    /// <summary>The share of pixels that differ by more than so much.</summary>
    public double ShareOff(GreyPicture other, int by) =>
        Pixels.Zip(other.Pixels).Count(pair => Math.Abs(pair.First - pair.Second) > by) / (double)Pixels.Length;

    private static byte[] Bytes(string file)
    {
        if (!file.EndsWith(".gz", StringComparison.Ordinal))
        {
            return File.ReadAllBytes(file);
        }

        using var packed = new GZipStream(File.OpenRead(file), CompressionMode.Decompress);
        using var bytes = new MemoryStream();
        packed.CopyTo(bytes);
        return bytes.ToArray();
    }
}
