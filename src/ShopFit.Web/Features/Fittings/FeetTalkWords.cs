using System.Globalization;
using Microsoft.Extensions.Localization;
using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Sentences;

namespace ShopFit.Web.Features.Fittings;

/// <summary>How it is said that a reading is hard to believe.</summary>
internal static class FeetTalkWords
{
    /// <summary>"that right length is 9 mm off everything else. It is kept either way."</summary>
    public static string Again(DoubtedReading doubted, IStringLocalizer<FittingWords> words)
    {
        var reading = doubted.Reading.Reading;
        var name = TraitWords.Name(reading.Trait, words).ToLower(CultureInfo.CurrentCulture);
        var side = FitSentences.Foot(reading.Foot);
        if (reading.Unit is ReadingUnit.Word)
        {
            return words["the {0} {1} does not go with all the rest. It is kept either way.", side, name];
        }

        var off = reading.InTraitUnit()!.Value - doubted.Doubt.Expected;
        return words[off < 0 ? "that {0} {1} is {2} {3} less than all the rest says. It is kept either way." : "that {0} {1} is {2} {3} more than all the rest says. It is kept either way.",
            side,
            name,
            Math.Round(Math.Abs(off)),
            TraitWords.Unit(ReadIn.Millimetres.For(reading.Trait), words)];
    }
}
