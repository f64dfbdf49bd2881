using System.Net;
using System.Text;

namespace ShopFit.Web.Features.Api;

/// <summary>JSON sent in chunks, without a word of how long it is.</summary>
internal sealed class UnmeasuredContent : HttpContent
{
    private readonly byte[] _bytes;

    public UnmeasuredContent(string text)
    {
        _bytes = Encoding.UTF8.GetBytes(text);
        Headers.ContentType = new("application/json");
    }

    protected override async Task SerializeToStreamAsync(Stream stream, TransportContext? context) => await stream.WriteAsync(_bytes);

    protected override bool TryComputeLength(out long length)
    {
        length = 0;
        return false;
    }
}
