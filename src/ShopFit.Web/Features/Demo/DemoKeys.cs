using System.Security.Cryptography;
using System.Text;

namespace ShopFit.Web.Features.Demo;

/// <summary>Keys of the commands that fill the demo: the same at every start, so that a load that was cut off goes on where it was.</summary>
internal static class DemoKeys
{
    /// <summary>A key made of a name: UUID version 8 (RFC 9562) of its SHA-256.</summary>
    public static Guid Of(string name)
    {
        var bytes = SHA256.HashData(Encoding.UTF8.GetBytes(name))[..16];
        bytes[6] = (byte)((bytes[6] & 0x0F) | 0x80);
        bytes[8] = (byte)((bytes[8] & 0x3F) | 0x80);
        return new Guid(bytes, bigEndian: true);
    }
}
