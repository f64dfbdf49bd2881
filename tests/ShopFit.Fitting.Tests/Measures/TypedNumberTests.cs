using System.Globalization;
using CsCheck;

namespace ShopFit.Fitting.Measures;

public class TypedNumberTests
{
    private static readonly Gen<string> GenLookalike =
        Gen.OneOf("0123456789.,/⁄-−+ \u00A0½¼⅛e".ToCharArray()).Array[0, 9].Select(letters => new string(letters));

    [Theory]
    [InlineData("238.5", 238.5)]
    [InlineData("238,5", 238.5)]
    [InlineData("  238 ", 238)]
    [InlineData("0", 0)]
    [InlineData(".5", 0.5)]
    [InlineData(",25", 0.25)]
    [InlineData("007", 7)]
    [InlineData("1,234", 1.234)]
    [InlineData("-2", -2)]
    [InlineData("−2,5", -2.5)]
    [InlineData("½", 0.5)]
    [InlineData("5½", 5.5)]
    [InlineData("5 ½", 5.5)]
    [InlineData("-1½", -1.5)]
    [InlineData("9 7/16", 9.4375)]
    [InlineData("9\u00A07/16", 9.4375)]
    [InlineData("9 7⁄16", 9.4375)]
    [InlineData("9-7/16", 9.4375)]
    [InlineData("9–⅜", 9.375)]
    [InlineData("9⅜", 9.375)]
    [InlineData("-9-3/8", -9.375)]
    [InlineData("7/16", 0.4375)]
    [InlineData("63/64", 0.984375)]
    [InlineData("3⅝", 3.625)]
    public void TryRead_reads_a_number_as_it_is_typed(string text, double expected)
    {
        Assert.True(TypedNumber.TryRead(text, out var value));
        Assert.Equal(expected, value);
    }

    [Theory]
    [InlineData("⅓", 1, 3)]
    [InlineData("⅔", 2, 3)]
    [InlineData("¼", 1, 4)]
    [InlineData("¾", 3, 4)]
    [InlineData("⅕", 1, 5)]
    [InlineData("⅖", 2, 5)]
    [InlineData("⅗", 3, 5)]
    [InlineData("⅘", 4, 5)]
    [InlineData("⅙", 1, 6)]
    [InlineData("⅚", 5, 6)]
    [InlineData("⅛", 1, 8)]
    [InlineData("⅜", 3, 8)]
    [InlineData("⅞", 7, 8)]
    public void A_fraction_of_one_character_is_the_fraction_written_out(string character, double numerator, double denominator)
    {
        Assert.True(TypedNumber.TryRead(character, out var value));
        Assert.Equal(numerator / denominator, value);

        // Unicode's own number of the character (CharUnicodeInfo) agrees.
        Assert.Equal(CharUnicodeInfo.GetNumericValue(character[0]), value, precision: 12);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("-")]
    [InlineData("--2")]
    [InlineData("- 2")]
    [InlineData("+2")]
    [InlineData("2-")]
    [InlineData("1,234.5")]
    [InlineData("1.234,5")]
    [InlineData("1 234")]
    [InlineData("1'234")]
    [InlineData("1e3")]
    [InlineData("0x1F")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("∞")]
    [InlineData("5.")]
    [InlineData(".")]
    [InlineData("5..5")]
    [InlineData("238 mm")]
    [InlineData("9 7/16\"")]
    [InlineData("9--7/16")]
    [InlineData("9-7")]
    [InlineData("9- 7/16")]
    [InlineData("9 7")]
    [InlineData("97/16")]
    [InlineData("16/16")]
    [InlineData("9 1/0")]
    [InlineData("1/65")]
    [InlineData("1/2/3")]
    [InlineData("/2")]
    [InlineData("1/")]
    [InlineData("5.5½")]
    [InlineData("½5")]
    [InlineData("½½")]
    [InlineData("5 -½")]
    [InlineData("٣")]
    [InlineData("２３８")]
    [InlineData("²")]
    public void TryRead_guesses_nothing(string? text)
    {
        Assert.False(TypedNumber.TryRead(text, out var value));
        Assert.Equal(0, value);
    }

    [Fact]
    public void A_number_beyond_all_numbers_is_refused() =>
        Assert.All(
            [new string('9', 400), new string('9', 400) + "½", new string('9', 400) + ",5"],
            text => Assert.False(TypedNumber.TryRead(text, out _)));

    [Fact]
    public void Minus_nought_is_nought()
    {
        Assert.True(TypedNumber.TryRead("-0", out var value));
        Assert.False(double.IsNegative(value));
    }

    [Fact]
    public void Any_number_comes_back_with_either_separator() =>
        Gen.Decimal[-9999, 9999].Select(number => Math.Round(number, 3)).Sample(number =>
        {
            var text = number.ToString(CultureInfo.InvariantCulture);

            Assert.True(TypedNumber.TryRead(text, out var point));
            Assert.True(TypedNumber.TryRead(text.Replace('.', ','), out var comma));
            Assert.Equal((double)number, point);
            Assert.Equal(point, comma);
        });

    [Fact]
    public void Any_sixteenth_comes_back_as_a_fraction() =>
        Gen.Select(Gen.Int[0, 20], Gen.Int[1, 15]).Sample((whole, sixteenths) =>
        {
            Assert.True(TypedNumber.TryRead(string.Create(CultureInfo.InvariantCulture, $"{whole} {sixteenths}/16"), out var value));
            Assert.Equal(whole + (sixteenths / 16.0), value);
        });

    [Fact]
    public void TryRead_never_throws_and_never_answers_what_is_not_a_number() =>
        Gen.OneOf(Gen.String, GenLookalike).Sample(text =>
        {
            var read = TypedNumber.TryRead(text, out var value);

            Assert.True(double.IsFinite(value));
            Assert.True(read || value == 0);
        }, iter: 20_000);
}
