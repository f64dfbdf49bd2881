using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Feet;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Arrival;

public sealed class AnswerAtArrivalTests : IAsyncLifetime
{
    private TestShop _shop = null!;
    private Guid _fittingId;

    public async ValueTask InitializeAsync()
    {
        _shop = await TestShop.OpenAsync();
        _fittingId = (await _shop.HasAsync(FittingRecord.Of(Guid.CreateVersion7(), _shop.Fitter, null, "pointe", _shop.Clock.GetUtcNow(), 13, Sex.Female))).Id;
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task A_new_fitting_has_no_answer_chosen_for_anybody()
    {
        var seen = await SeeAsync();

        Assert.Empty(seen.Arrival.Answers);
        Assert.Equal((false, false, false, false, null), (seen.FirstPair, seen.SoreLeft, seen.SoreRight, seen.SkinBroken, seen.TeacherAgreedOn));
    }

    [Fact]
    public async Task One_of_two_answers_takes_the_place_of_the_other_and_the_header_follows()
    {
        await TapAsync(new ArrivalTap("first-pair", null, "yes"));
        Assert.True((await SeeAsync()).FirstPair);

        await TapAsync(new ArrivalTap("first-pair", null, "no"));

        var seen = await SeeAsync();
        Assert.False(seen.FirstPair);
        Assert.Equal("no", seen.Arrival.Of(ArrivalQuestions.FirstPair));
        await using var db = _shop.CreateDbContext();
        Assert.Equal(1, await db.ArrivalAnswers.CountAsync(row => row.WithdrawnAt != null, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task What_is_sore_is_kept_for_each_foot_and_nothing_sore_takes_it_all_back()
    {
        await TapAsync(new ArrivalTap("sore", Side.Left, "nail"));
        await TapAsync(new ArrivalTap("sore", Side.Left, "blister"));
        await TapAsync(new ArrivalTap("sore", Side.Right, "skin-broken"));
        var sore = await SeeAsync();
        Assert.True(sore is { SoreLeft: true, SoreRight: true, SkinBroken: true });
        Assert.True(sore.Arrival.Stands(ArrivalQuestions.Sore, "nail", Side.Left) && sore.Arrival.Stands(ArrivalQuestions.Sore, "blister", Side.Left));

        await TapAsync(new ArrivalTap("nothing-sore", null, "yes"));

        var seen = await SeeAsync();
        Assert.True(seen is { SoreLeft: false, SoreRight: false, SkinBroken: false });
        Assert.Equal([new SeenAnswer("nothing-sore", null, "yes")], seen.Arrival.Answers);

        await TapAsync(new ArrivalTap("sore", Side.Left, "bunion"));
        Assert.Equal([new SeenAnswer("sore", Side.Left, "bunion")], (await SeeAsync()).Arrival.Answers);
    }

    [Fact]
    public async Task A_tap_of_one_tablet_never_overwrites_what_another_tapped_meanwhile()
    {
        await TapAsync(new ArrivalTap("sore", Side.Left, "nail"));
        await TapAsync(new ArrivalTap("first-pair", null, "yes"));

        Assert.True(await SeeAsync() is { SoreLeft: true, FirstPair: true });
    }

    [Fact]
    public async Task Several_findings_about_the_last_pair_stand_together_but_nothing_stands_alone()
    {
        await TapAsync(new ArrivalTap("last-pair", null, "sank"));
        await TapAsync(new ArrivalTap("last-pair", null, "loose"));
        await TapAsync(new ArrivalTap("last-pair", null, "loose", Stands: false));
        await TapAsync(new ArrivalTap("last-pair", null, "heel-slipped"));
        await TapAsync(new ArrivalTap("last-pair-note", null, "  worn two years "));
        Assert.Equal(["sank", "heel-slipped", "worn two years"], (await SeeAsync()).Arrival.Answers.Select(answer => answer.Answer));

        await TapAsync(new ArrivalTap("last-pair", null, "nothing"));
        await TapAsync(new ArrivalTap("last-pair-note", null, ""));

        Assert.Equal(["nothing"], (await SeeAsync()).Arrival.Answers.Select(answer => answer.Answer));
    }

    [Fact]
    public async Task The_yes_of_the_teacher_is_kept_with_its_day_and_not_yet_takes_it_back()
    {
        await TapAsync(new ArrivalTap("teacher-yes", null, "2026-03-14"));
        Assert.Equal(new DateOnly(2026, 3, 14), (await SeeAsync()).TeacherAgreedOn);

        await TapAsync(new ArrivalTap("teacher-yes", null, "not-yet"));

        Assert.Null((await SeeAsync()).TeacherAgreedOn);
    }

    [Fact]
    public async Task An_answer_to_all_questions_of_the_guideline_is_one_command_and_clears_nobody()
    {
        await TapAsync([.. ArrivalQuestions.Readiness.Select(question => new ArrivalTap(question.Id, null, "yes"))]);
        await TapAsync(new ArrivalTap("steady", null, "no"));
        await TapAsync(new ArrivalTap("in-earnest", null, "not-known"));

        var arrival = (await SeeAsync()).Arrival;
        Assert.Equal(["steady"], arrival.SpeaksForWaiting.Select(question => question.Id));
        Assert.Equal(["in-earnest"], arrival.ToAskTheTeacher.Select(question => question.Id));
    }

    [Theory]
    [InlineData("weight", null, "50", AnswerAtArrivalProblem.NotAsked)]
    [InlineData("first-pair", null, "maybe", AnswerAtArrivalProblem.NotAsked)]
    [InlineData("first-pair", Side.Left, "yes", AnswerAtArrivalProblem.NotAsked)]
    [InlineData("sore", null, "nail", AnswerAtArrivalProblem.NotAsked)]
    [InlineData("teacher-yes", null, "yes", AnswerAtArrivalProblem.NotADay)]
    [InlineData("teacher-yes", null, "2026-03-15", AnswerAtArrivalProblem.DayToCome)]
    public async Task What_cannot_be_is_refused_and_nothing_beside_it_is_kept(string question, Side? foot, string answer, AnswerAtArrivalProblem problem)
    {
        var outcome = await TapAsync(new ArrivalTap("last-pair", null, "sank"), new ArrivalTap(question, foot, answer));

        Assert.Equal(problem, Assert.IsType<AnswerAtArrivalOutcome.Invalid>(outcome).Problem);
        Assert.Empty((await SeeAsync()).Arrival.Answers);
    }

    [Fact]
    public async Task Too_many_words_are_refused() =>
        Assert.Equal(
            AnswerAtArrivalProblem.TooLong,
            Assert.IsType<AnswerAtArrivalOutcome.Invalid>(await TapAsync(new ArrivalTap("teacher-name", null, new string('n', ArrivalAnswer.LongestWords + 1)))).Problem);

    [Fact]
    public async Task A_closed_fitting_takes_no_answer()
    {
        await using (var db = _shop.CreateDbContext())
        {
            (await db.Fittings.SingleAsync(TestContext.Current.CancellationToken)).Close(_shop.Clock.GetUtcNow());
            await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        }

        Assert.IsType<AnswerAtArrivalOutcome.NotOpen>(await TapAsync(new ArrivalTap("last-pair", null, "sank")));
    }

    [Fact]
    public async Task The_same_tap_sent_twice_is_kept_once()
    {
        var command = Guid.CreateVersion7();
        for (var sent = 0; sent < 2; sent++)
        {
            await new AnswerAtArrival(_shop.Writes, _shop.Clock).RunAsync(
                _shop.Fitter, command, _fittingId, [new ArrivalTap("last-pair", null, "sank")], TestContext.Current.CancellationToken);
        }

        Assert.Single((await SeeAsync()).Arrival.Answers);
    }

    [Fact]
    public async Task What_the_header_knew_before_is_shown_and_can_be_taken_back()
    {
        await using (var db = _shop.CreateDbContext())
        {
            (await db.Fittings.SingleAsync(TestContext.Current.CancellationToken)).Start(firstPair: true, soreLeft: false, soreRight: true);
            await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        }

        Assert.True((await SeeAsync()).Arrival.Stands(ArrivalQuestions.Sore, ArrivalQuestions.SoreOtherwise, Side.Right));

        await TapAsync(new ArrivalTap("sore", Side.Right, "other", Stands: false), new ArrivalTap("first-pair", null, "yes", Stands: false));

        Assert.True(await SeeAsync() is { SoreRight: false, FirstPair: false, Arrival.Answers.Count: 0 });
    }

    private Task<AnswerAtArrivalOutcome> TapAsync(params ArrivalTap[] taps)
    {
        _shop.Clock.Advance(TimeSpan.FromSeconds(1));
        return new AnswerAtArrival(_shop.Writes, _shop.Clock).RunAsync(_shop.Fitter, Guid.CreateVersion7(), _fittingId, taps, TestContext.Current.CancellationToken);
    }

    private async Task<SeenFitting> SeeAsync() => (await new FittingQueries(_shop.Reads).SeeAsync(_fittingId, TestContext.Current.CancellationToken))!;
}
