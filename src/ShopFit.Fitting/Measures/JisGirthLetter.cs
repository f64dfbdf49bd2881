namespace ShopFit.Fitting.Measures;

/// <summary>A girth letter of JIS S 5037, from the slimmest to the fullest. E is the average foot.</summary>
public enum JisGirthLetter
{
    /// <summary>24 mm below E.</summary>
    A = 0,

    /// <summary>18 mm below E.</summary>
    B = 1,

    /// <summary>12 mm below E.</summary>
    C = 2,

    /// <summary>6 mm below E.</summary>
    D = 3,

    /// <summary>The average.</summary>
    E = 4,

    /// <summary>6 mm above E.</summary>
    EE = 5,

    /// <summary>12 mm above E.</summary>
    EEE = 6,

    /// <summary>18 mm above E.</summary>
    EEEE = 7,

    /// <summary>24 mm above E.</summary>
    F = 8,

    /// <summary>30 mm above E.</summary>
    G = 9,
}
