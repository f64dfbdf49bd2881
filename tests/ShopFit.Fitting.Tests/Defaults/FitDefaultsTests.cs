namespace ShopFit.Fitting.Defaults;

public class FitDefaultsTests
{
    [Fact]
    public void The_fingerprint_tells_equal_numbers_from_others()
    {
        var standard = FitDefaults.Standard;

        Assert.Equal(standard.Fingerprint(), new FitDefaults().Fingerprint());
        Assert.NotEqual(standard.Fingerprint(), (standard with { FitsFrom = .6 }).Fingerprint());
        Assert.NotEqual(standard.Fingerprint(), (standard with { Growth = new Growth { SdAYear = 3 } }).Fingerprint());
        Assert.NotEqual(standard.Fingerprint(), (standard with { ReadingSd = [.. standard.ReadingSd.Select(sd => sd + .1)] }).Fingerprint());
        Assert.Matches("^[0-9a-f]{64}$", standard.Fingerprint());
    }

    [Fact]
    public void Every_ease_that_a_check_or_a_pad_speaks_of_exists()
    {
        var eases = FitDefaults.Standard.Eases.Select(row => row.Criterion).ToHashSet(StringComparer.Ordinal);

        Assert.All(FitDefaults.Standard.Checks.SelectMany(check => check.Sees), term => Assert.Contains(term.Criterion, eases));
        Assert.All(FitDefaults.Standard.Pads.SelectMany(pad => pad.Effects.Keys), criterion => Assert.Contains(criterion, eases));
        Assert.All(FitDefaults.Standard.Kinds.SelectMany(kind => kind.Criteria), criterion => Assert.Contains(criterion.Id, eases));
    }
}
