using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Feet;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Fittings;

namespace ShopFit.Web.Features.Arrival;

/// <summary>What was said at arrival and still stands.</summary>
/// <param name="Answers">In the order in which it was said.</param>
/// <param name="TeacherOnFile">The teacher who stands with the dancer; empty where nobody does.</param>
/// <param name="TeachersOfStudio">Who teaches at the studio.</param>
/// <param name="AgeToAsk">Whether somebody answers for the dancer, but the day of birth is not known.</param>
public sealed record SeenArrival(IReadOnlyList<SeenAnswer> Answers, string TeacherOnFile, IReadOnlyList<string> TeachersOfStudio, bool AgeToAsk)
{
    /// <summary>Nothing was said yet.</summary>
    public static SeenArrival Empty { get; } = new([], "", [], AgeToAsk: false);

    /// <summary>Who was asked, or else who stands with the dancer; empty where nobody does.</summary>
    public string Teacher => Of(ArrivalQuestions.TeacherName) ?? TeacherOnFile;

    /// <summary>When something was last said or taken back; null while nothing was.</summary>
    public DateTimeOffset? SavedAt { get; init; }

    /// <summary>Questions of the guideline whose answer speaks for waiting.</summary>
    public IReadOnlyList<ArrivalQuestion> SpeaksForWaiting => [.. ArrivalQuestions.Readiness.Where(question => Of(question) is ArrivalQuestions.No)];

    /// <summary>Questions of the guideline that nobody here could answer.</summary>
    public IReadOnlyList<ArrivalQuestion> ToAskTheTeacher => [.. ArrivalQuestions.Readiness.Where(question => Of(question) is ArrivalQuestions.NotKnown)];

    /// <summary>The answer to a question; null while there is none.</summary>
    public string? Of(ArrivalQuestion question) => Answers.LastOrDefault(answer => answer.Question == question.Id)?.Answer;

    /// <summary>Whether an answer stands.</summary>
    public bool Stands(ArrivalQuestion question, string answer, Side? foot = null) =>
        Answers.Any(said => said.Question == question.Id && said.Answer == answer && said.Foot == foot);

    /// <summary>Reads it in an open context.</summary>
    internal static async Task<SeenArrival> LoadAsync(
        ShopDbContext db, FittingRecord fitting, string teacherOnFile, string teachersOfStudio, bool ageToAsk, CancellationToken cancellationToken)
    {
        var rows = await db.ArrivalAnswers.AsNoTracking()
            .Where(row => row.FittingId == fitting.Id)
            .OrderBy(row => row.SaidAt).ThenBy(row => row.Id)
            .ToListAsync(cancellationToken);
        var answers = rows.Where(row => row.WithdrawnAt is null).Select(row => new SeenAnswer(row.Question, row.Foot, row.Answer)).ToList();
        return new(
            [.. OfHeader(fitting, answers), .. answers],
            teacherOnFile,
            teachersOfStudio.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries),
            ageToAsk)
        {
            SavedAt = rows.Max(row => (DateTimeOffset?)(row.WithdrawnAt ?? row.SaidAt)),
        };
    }

    // What the header says without a row of its own was kept before anybody asked how.
    private static IEnumerable<SeenAnswer> OfHeader(FittingRecord fitting, IReadOnlyList<SeenAnswer> answers)
    {
        if (fitting.FirstPair && !answers.Any(answer => answer.Question == ArrivalQuestions.FirstPair.Id))
        {
            yield return new(ArrivalQuestions.FirstPair.Id, null, ArrivalQuestions.Yes);
        }

        foreach (var (foot, sore) in new[] { (Side.Left, fitting.SoreLeft), (Side.Right, fitting.SoreRight) })
        {
            if (sore && !answers.Any(answer => answer.Question == ArrivalQuestions.Sore.Id && answer.Foot == foot))
            {
                yield return new(ArrivalQuestions.Sore.Id, foot, ArrivalQuestions.SoreOtherwise);
            }
        }
    }
}

/// <summary>One answer that stands.</summary>
public sealed record SeenAnswer(string Question, Side? Foot, string Answer);
