namespace ShopFit.Sheets.Support;

public class ReadingGradeTests
{
    // Counts as an English dictionary divides the words; from memory.
    [Theory]
    [InlineData("the", 1)]
    [InlineData("shoes", 1)]
    [InlineData("toes", 1)]
    [InlineData("knee", 1)]
    [InlineData("years", 1)]
    [InlineData("pointe", 1)]
    [InlineData("placed", 1)]
    [InlineData("ankle", 2)]
    [InlineData("ankles", 2)]
    [InlineData("sizes", 2)]
    [InlineData("minutes", 2)]
    [InlineData("moulded", 2)]
    [InlineData("needed", 2)]
    [InlineData("doing", 2)]
    [InlineData("trying", 2)]
    [InlineData("measured", 2)]
    [InlineData("teacher’s", 2)]
    [InlineData("question", 2)]
    [InlineData("elastic", 3)]
    [InlineData("December", 3)]
    [InlineData("material", 4)]
    [InlineData("physiotherapist", 6)]
    public void Syllables_are_counted_as_a_dictionary_divides_words(string word, int syllables) =>
        Assert.Equal(syllables, ReadingGrade.Syllables(word));

    [Fact]
    public void The_formula_is_that_of_1975()
    {
        // 5 sentences, 100 words, 150 syllables: 0.39 × 20 + 11.8 × 1.5 − 15.59 = 9.91.
        Assert.Equal(9.91, ReadingGrade.Of(5, 100, 150), 10);
    }

    [Fact]
    public void A_hard_text_is_graded_hard() =>
        Assert.True(ReadingGrade.Of(["Physiotherapeutic recommendations necessitate individualised consideration of biomechanical characteristics."]) > 20);
}
