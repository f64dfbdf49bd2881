namespace ShopFit.Fitting.Feet;

/// <summary>Which of the dancer's own two feet.</summary>
public enum Side
{
    /// <summary>The dancer's left.</summary>
    Left = 0,

    /// <summary>The dancer's right.</summary>
    Right = 1,
}
