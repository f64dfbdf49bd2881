namespace ShopFit.Web.Data;

public sealed class NamedKeyTests
{
    private static readonly Guid Dns = Guid.Parse("6ba7b810-9dad-11d1-80b4-00c04fd430c8");

    // RFC 9562 (2024), appendix B.2: SHA-256 over the DNS name space and the name. The value is written down from memory.
    [Fact]
    public void The_example_of_the_standard_gets_the_key_of_the_standard() =>
        Assert.Equal(Guid.Parse("5c146b14-3c52-8afd-938a-375d0df1fbf6"), NamedKey.Of(Dns, "www.example.com"));

    [Fact]
    public void Another_name_or_another_space_gets_another_key()
    {
        var keys = new[] { NamedKey.Of(Dns, "a"), NamedKey.Of(Dns, "b"), NamedKey.Of(Guid.Empty, "a") };

        Assert.Equal(3, keys.Distinct().Count());
    }
}
