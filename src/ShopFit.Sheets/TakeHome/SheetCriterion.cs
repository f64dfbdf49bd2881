namespace ShopFit.Sheets.TakeHome;

/// <summary>How one place of the pair sits on both feet, pads counted.</summary>
public sealed record SheetCriterion
{
    /// <summary>Its stable id, such as <c>length</c>; chooses the words at the ends of the strip.</summary>
    public required string Id { get; init; }

    /// <summary>Its name, such as "Outer toes".</summary>
    public required string Name { get; init; }

    /// <summary>The left foot; null where nothing is known or the criterion does not apply.</summary>
    public SheetEase? Left { get; init; }

    /// <summary>The right foot; null where nothing is known or the criterion does not apply.</summary>
    public SheetEase? Right { get; init; }

    /// <summary>True where no ease is too much, so that the right part reaches to the end of the strip.</summary>
    public bool OpenAbove { get; init; }
}

/// <summary>The ease of one place on one foot, in numbers, on the strip and in words.</summary>
public sealed record SheetEase
{
    /// <summary>Expected ease: shoe minus foot, mm (shank: points).</summary>
    public required double Ease { get; init; }

    /// <summary>Lower end of the 90 % interval.</summary>
    public required double Low { get; init; }

    /// <summary>Upper end of the 90 % interval.</summary>
    public required double High { get; init; }

    /// <summary>Where the ease lies on the strip: 0 no fit, tight (short, soft); 1 no fit, loose (long, stiff); the middle third is right.</summary>
    public required double OnStrip { get; init; }

    /// <summary>Where the lower end lies on the strip, 0 to 1.</summary>
    public required double LowOnStrip { get; init; }

    /// <summary>Where the upper end lies on the strip, 0 to 1.</summary>
    public required double HighOnStrip { get; init; }

    /// <summary>The same in words, such as "about 2 mm long, fairly sure".</summary>
    public required string Sentence { get; init; }
}
