using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Shoes;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Features.Shelf;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Puts a pair that was measured on the inside on file. From then on the whole model is graded from it.</summary>
/// <remarks>
/// The sample is the record; the forms of all sizes follow from it whenever they are read, those of sizes that a later
/// catalogue brings included. A sample far from what its label says is measured once more before it is taken.
/// </remarks>
public sealed class MeasureSample(ShopWrites writes, TimeProvider clock)
{
    /// <summary>Longest name of whoever measured.</summary>
    public const int LongestName = 100;

    /// <param name="actor">Who enters it.</param>
    /// <param name="commandId">Key of the command; it becomes the key of the sample.</param>
    /// <param name="request">What was measured.</param>
    /// <param name="cancellationToken">Gives up before anything is written.</param>
    /// <exception cref="NotPermittedException">The actor is no manager.</exception>
    public Task<MeasureSampleOutcome> RunAsync(Actor actor, Guid commandId, MeasureSampleRequest request, CancellationToken cancellationToken) =>
        writes.RunAsManagerAsync<MeasureSampleOutcome>(actor, commandId, nameof(MeasureSample), async (db, ct) =>
        {
            var now = clock.GetUtcNow();
            var shop = await db.Shops.AsNoTracking().SingleAsync(row => row.Id == actor.ShopId, ct);
            if (Check(request, ShopTime.Of(shop).Day(now)) is { } problem)
            {
                return new MeasureSampleOutcome.Invalid(problem);
            }

            if (await db.ShoeSizes.AsNoTracking().SingleOrDefaultAsync(row => row.Id == request.SizeId, ct) is not { } size)
            {
                return new MeasureSampleOutcome.Gone();
            }

            var makerId = await db.ShoeModels.Where(model => model.Id == size.ModelId).Select(model => model.MakerId).SingleAsync(ct);
            var numbers = FitNumbers.Over(shop.FitOverridesJson).Numbers;
            var forms = await FormsOnFile.ReadAsync(db, numbers, ct);
            if (!request.MeasuredTwice && Doubts(request.Parts, forms.LabelOf(makerId, size), numbers) is { Count: > 0 } doubts)
            {
                return new MeasureSampleOutcome.AskedAgain(doubts);
            }

            db.MeasuredSamples.Add(MeasuredSample.Of(commandId, actor, size.ModelId, size.Id, request.MeasuredOn, request.MeasuredBy, request.Parts, now));
            await CatalogueVersion.RaiseAsync(db, ct);
            return new MeasureSampleOutcome.Graded(commandId, await db.ShoeSizes.CountAsync(row => row.ModelId == size.ModelId, ct));
        }, cancellationToken);

    /// <summary>The parts that lie so far from what the label says that they are measured once more.</summary>
    internal static IReadOnlyList<SampleDoubt> Doubts(IReadOnlyList<double?> parts, SizeLabel label, FitDefaults numbers)
    {
        var expected = ShoeForm.FromLabel(label, numbers);
        return
        [
            .. from part in Enum.GetValues<FormPart>()
               where parts[(int)part] is { } value
                   && Math.Abs(value - expected[part]) > numbers.FormSds.SampleAskedAgainFrom * numbers.FormSds.Offset(part, FormSource.Label)
               select new SampleDoubt(part, parts[(int)part]!.Value - expected[part]),
        ];
    }

    private static SampleProblem? Check(MeasureSampleRequest request, DateOnly today)
    {
        for (var part = 0; part < request.Parts.Count && part < ShoeForm.Parts; part++)
        {
            var column = CatalogueColumns.FormParts[part];
            if (request.Parts[part] is { } value && !(value >= column.Lowest && value <= column.Highest))
            {
                return new SampleProblem(SampleFault.OutOfRange, (FormPart)part, value, column.Lowest, column.Highest);
            }
        }

        return request switch
        {
            { Parts.Count: not ShoeForm.Parts } => new SampleProblem(SampleFault.NothingMeasured),
            _ when request.Parts.All(part => part is null) => new SampleProblem(SampleFault.NothingMeasured),
            _ when string.IsNullOrWhiteSpace(request.MeasuredBy) => new SampleProblem(SampleFault.NobodyMeasured),
            { MeasuredBy.Length: > LongestName } => new SampleProblem(SampleFault.NameTooLong, High: LongestName),
            _ when request.MeasuredOn > today => new SampleProblem(SampleFault.NotYet),
            _ => null,
        };
    }
}

/// <summary>A pair as it was measured.</summary>
/// <param name="SizeId">Which size it is.</param>
/// <param name="Parts">mm (points for the shank) in the order of <see cref="FormPart"/>; null where it was not measured.</param>
/// <param name="MeasuredOn">The shop's day.</param>
/// <param name="MeasuredBy">Who measured.</param>
/// <param name="MeasuredTwice">It was measured once more and came out the same: it is taken however far it lies from its label.</param>
public sealed record MeasureSampleRequest(Guid SizeId, IReadOnlyList<double?> Parts, DateOnly MeasuredOn, string MeasuredBy, bool MeasuredTwice = false);

/// <summary>A part that lies far from what the label says.</summary>
/// <param name="Part">Which part.</param>
/// <param name="Off">How much larger it is than the label says, mm (points for the shank).</param>
public sealed record SampleDoubt(FormPart Part, double Off);

/// <summary>What is wrong with a sample.</summary>
/// <param name="Fault">What.</param>
/// <param name="Part">In which part, where it is one.</param>
/// <param name="Value">What it said.</param>
/// <param name="Low">The least that is allowed.</param>
/// <param name="High">The most that is allowed.</param>
public sealed record SampleProblem(SampleFault Fault, FormPart? Part = null, double Value = 0, double Low = 0, double High = 0);

/// <summary>What can be wrong with a sample.</summary>
public enum SampleFault
{
    /// <summary>A number is outside what a shoe can be.</summary>
    OutOfRange,

    /// <summary>No part was measured.</summary>
    NothingMeasured,

    /// <summary>It is not said who measured.</summary>
    NobodyMeasured,

    /// <summary>The name is too long.</summary>
    NameTooLong,

    /// <summary>The day lies ahead.</summary>
    NotYet,
}

/// <summary>How it ended.</summary>
[JsonDerivedType(typeof(Graded), "graded")]
[JsonDerivedType(typeof(AskedAgain), "asked-again")]
[JsonDerivedType(typeof(Invalid), "invalid")]
[JsonDerivedType(typeof(Gone), "gone")]
public abstract record MeasureSampleOutcome
{
    private MeasureSampleOutcome()
    {
    }

    /// <summary>It is on file, and so many sizes of the model are graded from it.</summary>
    public sealed record Graded(Guid SampleId, int Sizes) : MeasureSampleOutcome;

    /// <summary>It lies far from its label: measure once more, or say that it was.</summary>
    public sealed record AskedAgain(IReadOnlyList<SampleDoubt> Doubts) : MeasureSampleOutcome, IRefusal;

    /// <summary>It cannot be.</summary>
    public sealed record Invalid(SampleProblem Problem) : MeasureSampleOutcome, IRefusal;

    /// <summary>There is no such size.</summary>
    public sealed record Gone : MeasureSampleOutcome, IRefusal;
}
