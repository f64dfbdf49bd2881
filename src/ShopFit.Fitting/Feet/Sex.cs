namespace ShopFit.Fitting.Feet;

/// <summary>Which of the two surveyed populations a foot is compared with.</summary>
public enum Sex
{
    /// <summary>Girls and women.</summary>
    Female = 0,

    /// <summary>Boys and men.</summary>
    Male = 1,
}
