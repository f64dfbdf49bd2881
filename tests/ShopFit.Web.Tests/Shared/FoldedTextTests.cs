namespace ShopFit.Web.Shared;

public class FoldedTextTests
{
    // Decompositions of the Unicode Character Database (Unicode Standard Annex 15); letters without one as they are typed: common practice, no source.
    [Theory]
    [InlineData("Zoë Brontë", "zoe bronte")]
    [InlineData("Zoe\u0308", "zoe")]
    [InlineData("ÅNGSTRÖM", "angstrom")]
    [InlineData("Łucja Straße", "lucja strasse")]
    [InlineData("Søren Æbelø", "soren aebelo")]
    [InlineData("ﬁona", "fiona")]
    [InlineData("O’Shea-O'Brien", "oshea obrien")]
    [InlineData("  Anna   Maria ", "anna maria")]
    [InlineData("Дарья", "дарья")]
    [InlineData("Nguyễn", "nguyen")]
    [InlineData("100%", "100")]
    [InlineData("%", "")]
    [InlineData("", "")]
    public void Case_and_accents_do_not_matter(string text, string key) => Assert.Equal(key, FoldedText.Of(text));

    [Theory]
    [InlineData("a\uD800b")]
    [InlineData("\uDC00")]
    [InlineData("\uFFFF\u0000")]
    public void Any_text_has_a_key(string text) => Assert.NotNull(FoldedText.Of(text));
}
