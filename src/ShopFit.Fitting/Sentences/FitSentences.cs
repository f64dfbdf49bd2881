using ShopFit.Fitting.Scoring;

namespace ShopFit.Fitting.Sentences;

/// <summary>Puts the numbers of a fit into plain words, in the current UI culture.</summary>
public static class FitSentences
{
    /// <summary>The name of a criterion as a fitter says it: "Length", "Outer toes".</summary>
    public static string Criterion(string criterionId) => throw new NotSupportedException("Not written yet.");

    /// <summary>How one place sits and how sure we are: "2 mm long, fairly sure"; "about right, very sure".</summary>
    public static string Ease(CriterionFit fit) => throw new NotSupportedException("Not written yet.");

    /// <summary>A chance as a word: likely, even, perhaps, unlikely.</summary>
    public static string ChanceWord(double chance) => throw new NotSupportedException("Not written yet.");

    /// <summary>A chance out of ten: "7 in 10", "less than 1 in 10".</summary>
    public static string ChanceInTen(double chance) => throw new NotSupportedException("Not written yet.");

    /// <summary>The name of a pad: "heel cushion".</summary>
    public static string Pad(string padId) => throw new NotSupportedException("Not written yet.");

    /// <summary>One sentence why this pair stands where it stands.</summary>
    public static string Reason(PairFit fit) => throw new NotSupportedException("Not written yet.");
}
