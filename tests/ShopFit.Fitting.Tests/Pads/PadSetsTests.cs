using CsCheck;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Scoring;

namespace ShopFit.Fitting.Pads;

public class PadSetsTests
{
    private static readonly FitDefaults Defaults = FitDefaults.Standard;
    private static readonly EaseModel Pointe = EaseModel.Of("pointe", Defaults);

    [Fact]
    public void Seven_correcting_pads_make_twenty_nine_sets_without_the_comfort_spacer()
    {
        var sets = PadSets.Of(Pointe, Defaults);

        Assert.Equal(1 + 7 + 21, sets.Count);
        Assert.Empty(sets.Sets[0]);
        Assert.All(sets.Sets, set => Assert.DoesNotContain(set, pad => pad.Id == "toe-spacer"));
        Assert.All(sets.Sets, set => Assert.Equal(set.Length, set.Select(pad => pad.Id).Distinct().Count()));
    }

    [Fact]
    public void Searching_by_steps_finds_what_a_naive_search_finds()
    {
        var sets = PadSets.Of(Pointe, Defaults);
        double[][] naive = [.. MonteCarlo.NaiveSets(Defaults)];

        Gen.Double[-12, 14].Array[Pointe.Count].Sample(
            eases =>
            {
                ulong works = ulong.MaxValue;
                for (int c = 0; c < eases.Length; c++)
                {
                    eases[c] /= 3; // so that some fit
                    works &= sets.Steps[c].At(eases[c]);
                }

                Assert.Equal(MonteCarlo.Fits(eases, naive, Defaults), works != 0);
            },
            iter: 20_000);
    }

    [Fact]
    public void Nothing_that_is_tight_is_made_tighter()
    {
        // Heel ideal from −4: at −4.5 a heel cushion is not offered, though −7 would still be borne.
        int heel = Array.FindIndex(Pointe.Criteria, criterion => criterion.Id == "heel");
        var sets = PadSets.Of(Pointe, Defaults);
        int cushion = Array.FindIndex(sets.Sets, set => set.Length == 1 && set[0].Id == "heel-cushion");

        Assert.Equal(0UL, sets.Steps[heel].At(-4.5) >> cushion & 1);
        Assert.Equal(1UL, sets.Steps[heel].At(-3.5) >> cushion & 1);
    }

    [Fact]
    public void Too_many_pads_are_refused_by_name()
    {
        var many = Defaults with { Pads = [.. Enumerable.Range(0, 12).Select(i => new Pad($"pad-{i}", new Dictionary<string, double>(StringComparer.Ordinal) { ["box"] = -i }, 1))] };

        Assert.Contains("12 correcting pads", Assert.Throws<ArgumentException>(() => PadSets.Of(Pointe, many)).Message, StringComparison.Ordinal);
    }
}
