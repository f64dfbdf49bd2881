namespace ShopFit.Web.Features.Fittings;

/// <summary>The age from which a pointe shoe may be fitted at all. Everything that shows or sells one asks here.</summary>
/// <remarks>
/// Weiss, Rist and Grossman 2009, J Dance Med Sci 13(3): 90-92, rule 1: not before the age of 12. Being older clears nobody:
/// the teacher and, for pain or injury, a clinician decide.
/// </remarks>
public static class PointeAge
{
    /// <summary>Whole years that must be over.</summary>
    public const double Least = 12;

    /// <summary>Whether this kind of shoe is for later. Somebody whose age is not known counts as grown.</summary>
    /// <param name="kind">Kind of footwear, such as "pointe".</param>
    /// <param name="ageYears">Age on the day, years; null where it is not known.</param>
    public static bool IsForLater(string kind, double? ageYears) => kind is "pointe" && ageYears < Least;
}
