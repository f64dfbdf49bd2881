using ShopFit.Fitting.Defaults;

namespace ShopFit.Web.Features.Settings;

public class OwnFitNumbersTests
{
    [Theory]
    [InlineData("""{"bands.pointe.length.weight":"heavy"}""", FitProblemCode.NotANumber)]
    [InlineData("""{"bands.pointe.length.weight":null}""", FitProblemCode.NotANumber)]
    [InlineData("""{"bands.pointe.length.weight":true}""", FitProblemCode.NotANumber)]
    [InlineData("""{"bands.pointe.length.weight":{}}""", FitProblemCode.NotANumber)]
    [InlineData("""{"kinds":[{"id":"pointe","criteria":[]}]}""", FitProblemCode.NotANumber)]
    [InlineData("""{"bands.pointe.length.weight":1e999}""", FitProblemCode.NotFinite)]
    [InlineData("""{"bands.pointe.length.weight":"Infinity"}""", FitProblemCode.NotFinite)]
    [InlineData("""{"bands.pointe.length.weight":"NaN"}""", FitProblemCode.NotFinite)]
    [InlineData("""{"bands.pointe.length.weight":-3}""", FitProblemCode.OutOfRange)]
    [InlineData("""{"bands.pointe.length.wait":3}""", FitProblemCode.UnknownNumber)]
    [InlineData("""{"bands.pointe.length.ideal-from":5}""", FitProblemCode.LimitsOutOfOrder)]
    [InlineData("[]", FitProblemCode.NotANumber)]
    [InlineData("7", FitProblemCode.NotANumber)]
    [InlineData("", FitProblemCode.NotANumber)]
    [InlineData("{\"bands", FitProblemCode.NotANumber)]
    public void Whatever_is_kept_badly_leaves_the_standard_numbers_and_is_told(string kept, FitProblemCode code)
    {
        var (numbers, problems) = FitNumbers.Over(kept);

        Assert.Equal(FitDefaults.Standard.Fingerprint(), numbers.Fingerprint());
        Assert.Equal(code, Assert.Single(problems).Code);
    }

    [Fact]
    public void A_bad_number_beside_a_good_one_leaves_the_good_one()
    {
        var (numbers, problems) = FitNumbers.Over("""{"pads":7,"readings.length.sd":1.4}""");

        Assert.Equal(1.4, numbers.ReadingSd[0]);
        Assert.Equal(FitProblemCode.UnknownNumber, Assert.Single(problems).Code);
    }

    [Fact]
    public void What_is_written_is_read_back_in_one_fixed_text()
    {
        var values = new Dictionary<string, double>(StringComparer.Ordinal) { ["readings.length.sd"] = 0.1 + 0.2, ["bands.pointe.toe-line.ideal-to"] = double.PositiveInfinity };

        string? text = OwnFitNumbers.Write(values);

        Assert.Equal("""{"bands.pointe.toe-line.ideal-to":"Infinity","readings.length.sd":0.30000000000000004}""", text);
        Assert.Equal(values, OwnFitNumbers.Read(text).Values);
        Assert.Null(OwnFitNumbers.Write(new Dictionary<string, double>(StringComparer.Ordinal)));
    }
}
