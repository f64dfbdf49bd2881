using System.Globalization;
using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Defaults;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.Features.Settings;

/// <summary>What happens when a manager sets fit numbers, or puts them back to their defaults: all of them together or none.</summary>
public sealed class ChangeFitNumbers(ShopWrites writes, TimeProvider clock)
{
    /// <param name="actor">Who sets them.</param>
    /// <param name="commandId">Key of the command.</param>
    /// <param name="changes">The numbers, with what stood there when the page was read.</param>
    /// <param name="reason">Why. A number of one's own needs a reason; going back to a default needs none.</param>
    /// <param name="cancellationToken">Gives up before anything is written.</param>
    public Task<ChangeFitNumbersOutcome> RunAsync(Actor actor, Guid commandId, IReadOnlyList<FitNumberChange> changes, string reason, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<ChangeFitNumbersOutcome>(
            actor,
            commandId,
            nameof(ChangeFitNumbers),
            async (db, ct) =>
            {
                if (reason.Trim().Length > SettingChange.LongestReason || (string.IsNullOrWhiteSpace(reason) && changes.Any(change => change.Value is not null)))
                {
                    return new ChangeFitNumbersOutcome.ReasonNotAllowed();
                }

                var shop = await db.Shops.SingleAsync(row => row.Id == actor.ShopId, ct);
                var own = OwnFitNumbers.Read(shop.FitOverridesJson).Values.ToDictionary(StringComparer.Ordinal);
                var overtaken = changes.Where(change => !Equals(Kept(own, change.Path), change.Seen)).Select(change => change.Path).ToList();
                if (overtaken.Count > 0)
                {
                    return new ChangeFitNumbersOutcome.ChangedMeanwhile(overtaken);
                }

                var rows = new List<SettingChange>();
                foreach (var change in changes)
                {
                    var before = Kept(own, change.Path);

                    // A number typed as its default is at its default.
                    var value = change.Value == AdjustableNumbers.Find(change.Path)?.Default ? null : change.Value;
                    if (!Equals(before, value))
                    {
                        Keep(own, change.Path, value);
                        rows.Add(SettingChange.Of(Guid.CreateVersion7(), actor, clock.GetUtcNow(), change.Path, TextOf(before), TextOf(value), reason));
                    }
                }

                // What was kept badly before is no reason to refuse something else.
                var changed = changes.Select(change => change.Path).ToHashSet(StringComparer.Ordinal);
                var problems = AdjustableNumbers.Over(own).Problems.Where(problem => problem.Paths.Any(changed.Contains)).ToList();
                if (problems.Count > 0)
                {
                    return new ChangeFitNumbersOutcome.Senseless(problems);
                }

                if (rows.Count > 0)
                {
                    shop.OverrideFit(OwnFitNumbers.Write(own));
                    db.SettingChanges.AddRange(rows);
                }

                return new ChangeFitNumbersOutcome.Changed(rows.Count);
            },
            cancellationToken);

    private static double? Kept(Dictionary<string, double> own, string path) => own.TryGetValue(path, out var value) ? value : null;

    private static void Keep(Dictionary<string, double> own, string path, double? value)
    {
        if (value is { } number)
        {
            own[path] = number;
        }
        else
        {
            own.Remove(path);
        }
    }

    private static string? TextOf(double? value) => value?.ToString("R", CultureInfo.InvariantCulture);
}

/// <summary>A fit number to be set.</summary>
/// <param name="Path">Which, as <see cref="AdjustableNumber.Path"/>.</param>
/// <param name="Seen">The shop's own value when the page was read; null where it stood at its default.</param>
/// <param name="Value">The new value; null goes back to the default.</param>
public sealed record FitNumberChange(string Path, double? Seen, double? Value);

/// <summary>How it ended.</summary>
[JsonDerivedType(typeof(Changed), "changed")]
[JsonDerivedType(typeof(Senseless), "senseless")]
[JsonDerivedType(typeof(ChangedMeanwhile), "changed-meanwhile")]
[JsonDerivedType(typeof(ReasonNotAllowed), "reason-not-allowed")]
public abstract record ChangeFitNumbersOutcome
{
    private ChangeFitNumbersOutcome()
    {
    }

    /// <param name="Count">How many numbers are others than before.</param>
    public sealed record Changed(int Count) : ChangeFitNumbersOutcome;

    /// <summary>With these numbers the model would make no sense.</summary>
    public sealed record Senseless(IReadOnlyList<FitProblem> Problems) : ChangeFitNumbersOutcome, IRefusal;

    /// <summary>Somebody else set some of them after the page was read.</summary>
    public sealed record ChangedMeanwhile(IReadOnlyList<string> Paths) : ChangeFitNumbersOutcome, IRefusal;

    /// <summary>The reason is missing, or too long.</summary>
    public sealed record ReasonNotAllowed : ChangeFitNumbersOutcome, IRefusal;
}
