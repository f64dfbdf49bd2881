using Bunit;
using Microsoft.Extensions.DependencyInjection;

namespace ShopFit.Web.Shared;

public sealed class NumberFieldTests : BunitContext
{
    private readonly List<double> _saved = [];
    private readonly List<double?> _typed = [];
    private string? _refusal;

    public NumberFieldTests() => Services.AddLocalization();

    [Theory]
    [InlineData("238.5", 238.5)]
    [InlineData("238,5", 238.5)]
    [InlineData("9 7/16", 9.4375)]
    public void What_people_type_is_saved_when_they_are_done(string typed, double number)
    {
        var field = Open();

        field.Find("input").Change(typed);

        Assert.Equal([number], _saved);
        Assert.Empty(field.FindAll("[role=alert]"));
    }

    [Fact]
    public void While_it_is_typed_the_number_is_told_and_not_saved()
    {
        var field = Open();

        field.Find("input").Input("238");
        field.Find("input").Input("238x");

        Assert.Equal([238.0, null], _typed);
        Assert.Empty(_saved);
    }

    [Fact]
    public void What_is_no_number_stays_in_the_field_with_a_sentence_that_names_it()
    {
        var field = Open();

        field.Find("input").Change("23 8.5 mm");

        Assert.Equal("23 8.5 mm", field.Find("input").GetAttribute("value"));
        Assert.Equal("true", field.Find("input").GetAttribute("aria-invalid"));
        var said = field.Find("[role=alert]").TextContent;
        Assert.Contains("Length, left foot", said, StringComparison.Ordinal);
        Assert.Contains("“23 8.5 mm”", said, StringComparison.Ordinal);
        Assert.Empty(_saved);
    }

    [Fact]
    public void A_number_that_is_refused_stays_in_the_field_with_the_reason()
    {
        _refusal = "2385 mm is outside what is possible here, 100 to 350.";
        var field = Open();

        field.Find("input").Change("2385");

        Assert.Equal("2385", field.Find("input").GetAttribute("value"));
        Assert.Equal(_refusal, field.Find("[role=alert]").TextContent);
    }

    [Fact]
    public void A_guess_stands_behind_the_field_and_is_never_taken_for_a_reading()
    {
        var field = Open(parameters => parameters.Add(it => it.Guess, "89").Add(it => it.Note, "± 4"));

        Assert.Equal("89", field.Find("input").GetAttribute("placeholder"));
        Assert.True(string.IsNullOrEmpty(field.Find("input").GetAttribute("value")));
        Assert.Contains("guessed", field.Find(".note").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_that_is_asked_for_again_says_so_in_a_word()
    {
        var field = Open(parameters => parameters.Add(it => it.Text, "237").Add(it => it.AskedAgain, true));

        Assert.Contains("again?", field.Find(".note").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Enter_on_a_reading_that_is_asked_for_again_keeps_the_same_once_more()
    {
        var field = Open(parameters => parameters.Add(it => it.Text, "237").Add(it => it.AskedAgain, true));

        field.Find("input").KeyDown("Enter");

        Assert.Equal([237.0], _saved);
    }

    [Fact]
    public void Emptying_the_field_changes_nothing()
    {
        var field = Open(parameters => parameters.Add(it => it.Text, "237"));

        field.Find("input").Change("");

        Assert.Empty(_saved);
        Assert.Equal("237", field.Find("input").GetAttribute("value"));
    }

    [Fact]
    public void What_was_typed_is_never_written_over_while_it_is_typed()
    {
        var field = Open();
        field.Find("input").Input("23");

        // What the page draws for the first digits may arrive after the next are typed: the field itself has to be bound.
        field.Find("input").Input("238,5");

        Assert.Equal("238,5", field.Find("input").GetAttribute("value"));
        field.Find("input").Change("238,5");
        Assert.Equal([238.5], _saved);
    }

    [Fact]
    public void The_key_of_the_readings_stands_beside_the_label_and_not_in_it()
    {
        var asked = 0;
        var field = Open(parameters => parameters.Add(it => it.Text, "237").Add(it => it.Readings, 3).Add(it => it.OnReadings, () => asked++));

        Assert.Empty(field.FindAll("label button"));
        field.Find("button").Click();
        Assert.Equal(1, asked);
        Assert.Equal("Length, left foot: 3 readings, show them", field.Find("button").GetAttribute("aria-label"));
    }

    [Fact]
    public void What_was_read_earlier_stands_under_the_field_belongs_to_it_and_can_be_opened()
    {
        var field = Open(parameters => parameters.Add(it => it.Earlier, "May 2026: 236"));

        var earlier = field.Find(".earlier");
        Assert.Equal("May 2026: 236", earlier.TextContent);
        Assert.Contains(earlier.Id!, field.Find("input").GetAttribute("aria-describedby")!.Split(' '));
        Assert.Equal("Length, left foot: show what was read earlier", field.Find("button").GetAttribute("aria-label"));
    }

    [Theory]
    [InlineData("decimal")]
    [InlineData("text")]
    public void The_keypad_is_the_one_that_has_the_signs_of_the_unit(string keypad) =>
        Assert.Equal(keypad, Open(parameters => parameters.Add(it => it.Keypad, keypad)).Find("input").GetAttribute("inputmode"));

    [Fact]
    public void The_browser_is_told_what_is_kept_apart_from_what_is_typed()
    {
        var field = Open(parameters => parameters.Add(it => it.Text, "237.5"));

        field.Find("input").Input("23");

        Assert.Equal("23", field.Find("input").GetAttribute("value"));
        Assert.Equal("237.5", field.Find("input").GetAttribute("data-kept"));
        Assert.Equal("", Open().Find("input").GetAttribute("data-kept"));
    }

    private IRenderedComponent<NumberField> Open(Action<ComponentParameterCollectionBuilder<NumberField>>? more = null) => Render<NumberField>(parameters =>
    {
        parameters
            .Add(it => it.Label, "Length, left foot")
            .Add(it => it.Unit, "mm")
            .Add(it => it.OnTyping, number => _typed.Add(number))
            .Add(it => it.Save, number =>
            {
                if (_refusal is null)
                {
                    _saved.Add(number);
                }

                return Task.FromResult(_refusal);
            });
        more?.Invoke(parameters);
    });
}
