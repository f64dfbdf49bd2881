using System.Security.Cryptography;
using System.Text;

namespace ShopFit.Web.Data;

/// <summary>Keys that follow from a name: whoever asks for the same thing gets the same key, on any tablet and after any reload.</summary>
/// <remarks>RFC 9562 (2024), UUID version 8 as in its example B.2: the first 128 bits of SHA-256 over the space and the name.</remarks>
public static class NamedKey
{
    private const int KeyLength = 16;
    private const byte Version8 = 0x80;
    private const byte Variant = 0x80;

    /// <summary>The key of a name.</summary>
    /// <param name="space">Within what the name says one thing only.</param>
    /// <param name="name">The name.</param>
    public static Guid Of(Guid space, string name)
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData([.. space.ToByteArray(bigEndian: true), .. Encoding.UTF8.GetBytes(name)], hash);
        var key = hash[..KeyLength];
        key[6] = (byte)((key[6] & 0x0F) | Version8);
        key[8] = (byte)((key[8] & 0x3F) | Variant);
        return new Guid(key, bigEndian: true);
    }
}
