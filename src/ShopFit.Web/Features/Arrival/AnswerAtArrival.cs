using System.Globalization;
using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Feet;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Fittings;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Arrival;

/// <summary>Keeps what is said at arrival, tap by tap: an answer that now stands, or stands no longer.</summary>
/// <remarks>
/// A tap says what it changes and nothing else, so two tablets at one fitting never overwrite each other. What the rest of a
/// fitting goes by (first pair, sore, skin broken, the teacher's day) follows in its header in the same transaction.
/// </remarks>
public sealed class AnswerAtArrival(ShopWrites writes, TimeProvider clock)
{
    /// <param name="actor">Who taps.</param>
    /// <param name="commandId">Key of the command.</param>
    /// <param name="fittingId">At which fitting.</param>
    /// <param name="taps">What changes, in order; all of it or nothing.</param>
    /// <param name="cancellationToken">Gives up before anything is written.</param>
    public Task<AnswerAtArrivalOutcome> RunAsync(Actor actor, Guid commandId, Guid fittingId, IReadOnlyList<ArrivalTap> taps, CancellationToken cancellationToken) =>
        writes.RunAsync<AnswerAtArrivalOutcome>(actor, commandId, nameof(AnswerAtArrival), async (db, ct) =>
        {
            var fitting = await db.Fittings.SingleOrDefaultAsync(row => row.Id == fittingId, ct);
            if (fitting is not { ClosedAt: null })
            {
                return new AnswerAtArrivalOutcome.NotOpen();
            }

            var now = clock.GetUtcNow();
            var today = ShopTime.Of(await db.Shops.SingleAsync(row => row.Id == actor.ShopId, ct)).Day(now);
            if (taps.Select(tap => Check(tap, today)).FirstOrDefault(problem => problem is not null) is { } problem)
            {
                return new AnswerAtArrivalOutcome.Invalid(problem);
            }

            var rows = await db.ArrivalAnswers.Where(row => row.FittingId == fittingId && row.WithdrawnAt == null).ToListAsync(ct);
            foreach (var tap in taps)
            {
                Apply(tap);
            }

            Follow(fitting, taps, [.. rows.Where(row => row.WithdrawnAt is null)]);
            return new AnswerAtArrivalOutcome.Kept();

            void Apply(ArrivalTap tap)
            {
                var answer = tap.Answer.Trim();
                var question = ArrivalQuestions.Find(tap.Question)!;
                var standing = rows.Where(row => row.WithdrawnAt is null && row.Question == tap.Question && row.Foot == tap.Foot).ToList();
                var stands = tap.Stands && answer.Length > 0;
                foreach (var row in standing.Where(row => stands ? IsReplaced(question, row.Answer, answer) : question.InWords || row.Answer == answer))
                {
                    row.Withdraw(now);
                }

                if (!stands)
                {
                    return;
                }

                foreach (var row in rows.Where(row => row.WithdrawnAt is null && Contradict(row.Question, tap.Question)))
                {
                    row.Withdraw(now);
                }

                if (!standing.Exists(row => row.WithdrawnAt is null && row.Answer == answer))
                {
                    var row = ArrivalAnswer.Of(Guid.CreateVersion7(now), actor, fittingId, now, tap.Question, tap.Foot, answer);
                    db.ArrivalAnswers.Add(row);
                    rows.Add(row);
                }
            }
        }, cancellationToken);

    private static bool IsReplaced(ArrivalQuestion question, string standing, string answer) =>
        standing != answer && (!question.Several || standing == ArrivalQuestions.Nothing || answer == ArrivalQuestions.Nothing);

    private static bool Contradict(string standing, string tapped) =>
        (standing == ArrivalQuestions.Sore.Id && tapped == ArrivalQuestions.NothingSore.Id)
        || (standing == ArrivalQuestions.NothingSore.Id && tapped == ArrivalQuestions.Sore.Id);

    // Only what was tapped changes in the header: the rest may have come from somewhere else.
    private static void Follow(FittingRecord fitting, IReadOnlyList<ArrivalTap> taps, IReadOnlyList<ArrivalAnswer> standing)
    {
        bool Tapped(ArrivalQuestion question) => taps.Any(tap => tap.Question == question.Id);
        string? Answer(ArrivalQuestion question) => standing.LastOrDefault(row => row.Question == question.Id)?.Answer;
        bool Sore(Side foot) => standing.Any(row => row.Question == ArrivalQuestions.Sore.Id && row.Foot == foot);
        bool SoreTapped(Side foot) => Tapped(ArrivalQuestions.NothingSore) || taps.Any(tap => tap.Question == ArrivalQuestions.Sore.Id && tap.Foot == foot);

        var sore = Tapped(ArrivalQuestions.Sore) || Tapped(ArrivalQuestions.NothingSore);
        fitting.Start(
            Tapped(ArrivalQuestions.FirstPair) ? Answer(ArrivalQuestions.FirstPair) is ArrivalQuestions.Yes : fitting.FirstPair,
            SoreTapped(Side.Left) ? Sore(Side.Left) : fitting.SoreLeft,
            SoreTapped(Side.Right) ? Sore(Side.Right) : fitting.SoreRight,
            sore ? standing.Any(row => row.Question == ArrivalQuestions.Sore.Id && row.Answer == ArrivalQuestions.SkinBroken) : fitting.SkinBroken,
            Tapped(ArrivalQuestions.TeacherYes) ? DayOf(Answer(ArrivalQuestions.TeacherYes)) : fitting.TeacherAgreedOn);
    }

    private static AnswerAtArrivalProblem? Check(ArrivalTap tap, DateOnly today)
    {
        var question = ArrivalQuestions.Find(tap.Question);
        if (question is null || question.EachFoot != tap.Foot is not null)
        {
            return AnswerAtArrivalProblem.NotAsked;
        }

        if (!question.InWords)
        {
            return question.Answers.Contains(tap.Answer, StringComparer.Ordinal) ? null : AnswerAtArrivalProblem.NotAsked;
        }

        if (tap.Answer.Length > ArrivalAnswer.LongestWords)
        {
            return AnswerAtArrivalProblem.TooLong;
        }

        return question.Id != ArrivalQuestions.TeacherYes.Id || tap.Answer is "" or ArrivalQuestions.NotYet ? null
            : DayOf(tap.Answer) is not { } day ? AnswerAtArrivalProblem.NotADay
            : day > today ? AnswerAtArrivalProblem.DayToCome
            : null;
    }

    private static DateOnly? DayOf(string? answer) =>
        DateOnly.TryParseExact(answer, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;
}

/// <summary>One tap at arrival.</summary>
/// <param name="Question">Id of one of the <see cref="ArrivalQuestions"/>.</param>
/// <param name="Foot">Which foot; null where the question is not about one.</param>
/// <param name="Answer">What was said; nothing takes words back.</param>
/// <param name="Stands">Whether it stands now, or no longer.</param>
public sealed record ArrivalTap(string Question, Side? Foot, string Answer, bool Stands = true);

/// <summary>What is wrong with a tap.</summary>
public enum AnswerAtArrivalProblem
{
    /// <summary>There is no such question, or no such answer to it.</summary>
    NotAsked,

    /// <summary>More words than are kept.</summary>
    TooLong,

    /// <summary>The teacher's yes has no day.</summary>
    NotADay,

    /// <summary>The day of the teacher's yes is still to come.</summary>
    DayToCome,
}

/// <summary>How keeping it ended.</summary>
[JsonDerivedType(typeof(Kept), "kept")]
[JsonDerivedType(typeof(NotOpen), "not-open")]
[JsonDerivedType(typeof(Invalid), "invalid")]
public abstract record AnswerAtArrivalOutcome
{
    private AnswerAtArrivalOutcome()
    {
    }

    /// <summary>It is kept.</summary>
    public sealed record Kept : AnswerAtArrivalOutcome;

    /// <summary>The fitting is closed, or there is none.</summary>
    public sealed record NotOpen : AnswerAtArrivalOutcome, IRefusal;

    /// <summary>One of the taps cannot be; none was kept.</summary>
    public sealed record Invalid(AnswerAtArrivalProblem Problem) : AnswerAtArrivalOutcome, IRefusal;
}
