using ShopFit.Fitting.Measures;

namespace ShopFit.Fitting.Shoes;

/// <summary>What the words on a maker's labels mean, as the shop has said once for all its models.</summary>
/// <remarks>A word of which nothing was said leaves what is known of the label otherwise. Capitals count.</remarks>
public sealed record LabelMeanings
{
    /// <summary>The furthest step that a word can mean, to both sides.</summary>
    public const int LargestStep = 2;

    /// <summary>Nothing was said of any word.</summary>
    public static LabelMeanings None { get; } = new();

    /// <summary>How labels in a size system are to be read, by the id of the system that the catalogue gives.</summary>
    public IReadOnlyDictionary<string, SystemMeaning> Systems { get; init; } = new Dictionary<string, SystemMeaning>(StringComparer.Ordinal);

    /// <summary>Width steps by the maker's word for a width: −1 slim, 0 standard, +1 broad.</summary>
    public IReadOnlyDictionary<string, double> Widths { get; init; } = new Dictionary<string, double>(StringComparer.Ordinal);

    /// <summary>What the maker's word for any further choice says of box and vamp.</summary>
    public IReadOnlyDictionary<string, OptionMeaning> Options { get; init; } = new Dictionary<string, OptionMeaning>(StringComparer.Ordinal);

    /// <summary>Shank points, 0 soft to 10 stiff, by the maker's word for a shank.</summary>
    public IReadOnlyDictionary<string, double> Shanks { get; init; } = new Dictionary<string, double>(StringComparer.Ordinal);

    /// <summary>The label with its words understood.</summary>
    /// <param name="label">The label as the catalogue gives it, with the steps that the catalogue gives.</param>
    /// <param name="width">The maker's word for its width; may be empty.</param>
    /// <param name="option">The maker's word for any further choice; may be empty.</param>
    /// <param name="shankName">The maker's word for its shank; may be empty.</param>
    /// <remarks>A size that the system it should be read in does not have is read in its own.</remarks>
    public SizeLabel Read(SizeLabel label, string width, string option, string shankName)
    {
        var system = label.System;
        double? allowance = label.Allowance;
        if (Systems.TryGetValue(label.System.Id, out var meaning) && SizeSystem.Find(meaning.SystemId) is { } meant && meant.Covers(label.Size))
        {
            (system, allowance) = (meant, meaning.LabelLessGauge * MillimetresASize(meant));
        }

        var steps = Options.GetValueOrDefault(option, new OptionMeaning(label.BoxStep, label.VampStep));
        return label with
        {
            System = system,
            Allowance = allowance,
            WidthStep = Widths.GetValueOrDefault(width, label.WidthStep),
            BoxStep = steps.BoxStep,
            VampStep = steps.VampStep,
            ShankPoints = Shanks.TryGetValue(shankName, out var points) ? points : label.ShankPoints,
        };
    }

    /// <summary>How many mm one whole size of a system is.</summary>
    public static double MillimetresASize(SizeSystem system) =>
        (system.FootLengthOf(system.Largest) - system.FootLengthOf(system.Smallest)).Value / (system.Largest - system.Smallest);
}

/// <summary>How a maker's labels in a size system are to be read.</summary>
/// <param name="SystemId">The system that they are really in.</param>
/// <param name="LabelLessGauge">How many sizes the label is ahead of the foot that fits; null: as the shop's numbers say of that system.</param>
public sealed record SystemMeaning(string SystemId, double? LabelLessGauge);

/// <summary>What one word says of box and vamp.</summary>
/// <param name="BoxStep">−1 tapered, 0 plain, +1 square.</param>
/// <param name="VampStep">−1 short, 0, +1 long.</param>
public sealed record OptionMeaning(double BoxStep, double VampStep);
