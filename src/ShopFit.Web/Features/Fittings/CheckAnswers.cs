using ShopFit.Fitting.Feet;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Web.Features.Fittings;

/// <summary>What a tap on a check says: one tap answers for both feet, a second one on the other foot splits them, the same tap again takes it back.</summary>
public static class CheckAnswers
{
    /// <summary>What a tap says, beside what was said before.</summary>
    /// <param name="said">The answers that stand.</param>
    /// <param name="foot">The foot whose answer was tapped.</param>
    /// <param name="check">The check.</param>
    /// <param name="answer">0, 1 or 2.</param>
    /// <param name="byDancer">Whether the dancer says it.</param>
    public static (IReadOnlyList<CheckAnswer> Answers, IReadOnlyList<CheckOfFoot> TakenBack) Tap(
        IReadOnlyList<CheckAnswer> said, Side foot, string check, int answer, bool byDancer)
    {
        var before = said.FirstOrDefault(given => given.Foot == foot && given.Check == check);
        if (before?.Answer == answer && before.ByDancer == byDancer)
        {
            return ([], [new CheckOfFoot(foot, check)]);
        }

        Side[] feet = said.Any(given => given.Check == check) ? [foot] : [Side.Left, Side.Right];
        return ([.. feet.Select(each => new CheckAnswer(each, check, answer, byDancer))], []);
    }

    /// <summary>The middle answer, as it should be, for all that is left of some checks.</summary>
    public static IReadOnlyList<CheckAnswer> RestAsItShouldBe(IReadOnlyList<CheckAnswer> said, IEnumerable<Check> checks, bool byDancer) =>
    [
        .. checks.SelectMany(check => Enum.GetValues<Side>()
            .Where(foot => !said.Any(given => given.Foot == foot && given.Check == check.Id))
            .Select(foot => new CheckAnswer(foot, check.Id, 1, byDancer))),
    ];

    /// <summary>What stands once this was said too: a later answer of a check and foot takes the place of the earlier.</summary>
    public static IReadOnlyList<CheckAnswer> After(IReadOnlyList<CheckAnswer> before, IReadOnlyList<CheckAnswer> answers, IReadOnlyList<CheckOfFoot> takenBack) =>
    [
        .. before.Where(given => !answers.Any(now => now.Foot == given.Foot && now.Check == given.Check) && !takenBack.Contains(new CheckOfFoot(given.Foot, given.Check))),
        .. answers,
    ];
}
