using Microsoft.EntityFrameworkCore;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Shoes;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>Works out the inside of every size from what is on file of it: samples that the shop measured, what the catalogue gives, what its label means.</summary>
/// <remarks>
/// Nothing worked out is kept in the database. The catalogue's own numbers stay as they were imported, so importing a
/// file again changes nothing; taking a sample or a mapping back brings back exactly what was there before it.
/// </remarks>
internal sealed class FormsOnFile
{
    private readonly FitDefaults _numbers;
    private readonly Dictionary<Guid, LabelMeanings> _meaningsOfMaker;
    private readonly ILookup<Guid, SampleOnFile> _samplesOfModel;
    private readonly Dictionary<Guid, SampledModel> _models = [];

    private FormsOnFile(FitDefaults numbers, Dictionary<Guid, LabelMeanings> meaningsOfMaker, IEnumerable<SampleOnFile> samples)
    {
        _numbers = numbers;
        _meaningsOfMaker = meaningsOfMaker;
        _samplesOfModel = samples.ToLookup(sample => sample.Size.ModelId);
    }

    public static async Task<FormsOnFile> ReadAsync(ShopDbContext db, FitDefaults numbers, CancellationToken cancellationToken)
    {
        var mappings = await db.LabelMappings.AsNoTracking().Where(mapping => mapping.WithdrawnAt == null).ToListAsync(cancellationToken);
        var samples = await (
            from sample in db.MeasuredSamples.AsNoTracking()
            join size in db.ShoeSizes.AsNoTracking() on sample.SizeId equals size.Id
            where sample.WithdrawnAt == null
            select new { Sample = sample, Size = size }).ToListAsync(cancellationToken);
        return new FormsOnFile(
            numbers,
            mappings.GroupBy(mapping => mapping.MakerId).ToDictionary(
                maker => maker.Key,
                maker => maker.OrderBy(mapping => mapping.MappedAt).ThenBy(mapping => mapping.Id).Last().Meanings()),
            samples.OrderBy(row => row.Sample.EnteredAt).ThenBy(row => row.Sample.Id)
                .Select(row => new SampleOnFile(row.Sample.Parts, row.Size)));
    }

    /// <summary>What the shop has said of a maker's labels.</summary>
    public LabelMeanings MeaningsOf(Guid makerId) => _meaningsOfMaker.GetValueOrDefault(makerId, LabelMeanings.None);

    /// <summary>The same with other meanings of one maker's labels.</summary>
    public FormsOnFile With(Guid makerId, LabelMeanings meanings) =>
        new(_numbers, new Dictionary<Guid, LabelMeanings>(_meaningsOfMaker) { [makerId] = meanings }, _samplesOfModel.SelectMany(samples => samples));

    /// <summary>The same with one more sample, entered after all others.</summary>
    public FormsOnFile With(SampleOnFile sample) =>
        new(_numbers, _meaningsOfMaker, _samplesOfModel.SelectMany(samples => samples).Append(sample));

    /// <summary>The label of a size, its words understood.</summary>
    public SizeLabel LabelOf(Guid makerId, ShoeSize size)
    {
        var form = size.Form;
        var system = SizeSystem.Find(size.SizeSystem) ?? throw new InvalidOperationException($"Size {size.Id} is of an unknown size system.");
        return MeaningsOf(makerId).Read(
            new SizeLabel(system, size.Size, form.WidthStep, form.BoxStep, form.VampStep, form.ShankPoints), size.Width, size.Option, size.ShankName);
    }

    /// <summary>The inside of a size.</summary>
    public FormOnFile Of(Guid makerId, ShoeSize size)
    {
        var label = LabelOf(makerId, size);
        var (given, source) = (size.Form, SourceOf(size.Form.Source));

        // What the shop says of a shank's name stands above a number that only repeats the label, and below one that was measured.
        double?[] known =
        [
            given.LengthMm, given.BoxBreadthMm, given.BallGirthMm, given.HeelBreadthMm, given.CrownDepthMm, given.ToeSlopeMm, given.VampMm,
            source is FormSource.Label ? label.ShankPoints : given.ShankPoints,
        ];
        var parts = known.Select(value => value is { } number ? new KnownPart(number, source) : (KnownPart?)null).ToArray();
        var sizes = new Guid?[ShoeForm.Parts];
        if (_samplesOfModel[size.ModelId].ToList() is { Count: > 0 } samples)
        {
            if (!_models.TryGetValue(size.ModelId, out var model))
            {
                _models.Add(size.ModelId, model = new SampledModel([.. samples.Select(sample => GradingOf(makerId, sample))]));
            }

            var graded = model.Under(label, _numbers);
            for (var part = 0; part < ShoeForm.Parts; part++)
            {
                // A pair that was itself measured keeps its numbers, even where another size carries the same label.
                var own = samples.FindLast(sample => sample.Size.Id == size.Id && sample.Parts[part] is not null);
                if (own is not null)
                {
                    (parts[part], sizes[part]) = (new KnownPart(own.Parts[part]!.Value, FormSource.Measured), size.Id);
                }
                else if (graded[part] is { } of)
                {
                    (parts[part], sizes[part]) = (new KnownPart(of.Value, FormSource.Measured), samples[of.Sample].Size.Id);
                }
            }
        }

        return new FormOnFile(ShoeForm.Of(parts, label, _numbers), label, sizes);
    }

    private Grading GradingOf(Guid makerId, SampleOnFile sample)
    {
        var label = LabelOf(makerId, sample.Size);
        return new Grading(ShoeForm.Of(sample.Parts, FormSource.Measured, label, _numbers), label);
    }

    private static FormSource SourceOf(string source) => source switch
    {
        "measured" => FormSource.Measured,
        "maker" => FormSource.Maker,
        _ => FormSource.Label,
    };
}

/// <summary>A sample as it counts for the forms of its model.</summary>
/// <param name="Parts">What was measured, in the order of <see cref="FormPart"/>.</param>
/// <param name="Size">The size that was measured.</param>
internal sealed record SampleOnFile(IReadOnlyList<double?> Parts, ShoeSize Size);

/// <summary>The inside of a size, and where it comes from.</summary>
/// <param name="Form">The eight parts and how each is known.</param>
/// <param name="Label">The label, its words understood.</param>
/// <param name="SampledSizes">For each part the size of the sample that it was graded from, or its own size where it was itself measured; null where no sample says it.</param>
internal sealed record FormOnFile(ShoeForm Form, SizeLabel Label, IReadOnlyList<Guid?> SampledSizes);
