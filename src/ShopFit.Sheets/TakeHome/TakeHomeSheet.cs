namespace ShopFit.Sheets.TakeHome;

/// <summary>Everything a take-home sheet says, already decided: drawing it adds no facts.</summary>
/// <remarks>
/// Plain properties without logic, so that a sheet is kept as JSON (System.Text.Json, default options) and drawn again
/// years later without the database or the scoring. Sentences are kept as they were said on the day, in
/// <see cref="Language"/>. All lengths are in millimetres, whatever unit is shown.
/// </remarks>
public sealed record TakeHomeSheet
{
    /// <summary>The format that new sheets are written in.</summary>
    public const int CurrentFormatVersion = 1;

    /// <summary>The format this sheet was written in; a later format must still be able to draw it.</summary>
    public int FormatVersion { get; init; } = CurrentFormatVersion;

    /// <summary>The language of its sentences as a BCP 47 tag, such as <c>en</c> or <c>en-GB</c>.</summary>
    public string Language { get; init; } = "en";

    /// <summary>The paper it is drawn for.</summary>
    public PaperSize Paper { get; init; } = PaperSize.A4;

    /// <summary>The unit in which lengths are shown.</summary>
    public ShownUnit Units { get; init; } = ShownUnit.Millimetres;

    /// <summary>The day of the fitting.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>Who fitted.</summary>
    public required string Fitter { get; init; }

    /// <summary>Whose shoes they are.</summary>
    public required SheetDancer Dancer { get; init; }

    /// <summary>The shop that can be asked.</summary>
    public required SheetShop Shop { get; init; }

    /// <summary>What was fitted.</summary>
    public required SheetPair Pair { get; init; }

    /// <summary>The dancer's left foot.</summary>
    public required SheetFoot Left { get; init; }

    /// <summary>The dancer's right foot.</summary>
    public required SheetFoot Right { get; init; }

    /// <summary>The pads that went in, in the order of their numbers; none is a good answer.</summary>
    public IReadOnlyList<SheetPad> Pads { get; init; } = [];

    /// <summary>How the pair sits, one row a criterion that matters, most telling first. Five or six read best.</summary>
    public IReadOnlyList<SheetCriterion> Criteria { get; init; } = [];

    /// <summary>The whole sentence "We chose them because ...".</summary>
    public required string Because { get; init; }

    /// <summary>How many pairs were tried, this one counted; 0 where nobody noted it, and then nothing is said.</summary>
    public int PairsTried { get; init; } = 1;

    /// <summary>Who sews what; see <see cref="SheetSewing"/>.</summary>
    public SheetSewing Sewing { get; init; } = SheetSewing.AtHome;

    /// <summary>Whether an elastic is sewn as well as the ribbon.</summary>
    public bool WithElastic { get; init; } = true;

    /// <summary>How many minutes a day a paste box is worn at home at first; common practice, no source.</summary>
    public int HomeMinutesADay { get; init; } = 10;

    /// <summary>Last day on which unworn, unsewn shoes may come back; null where they may not.</summary>
    public DateOnly? ReturnUntil { get; init; }

    /// <summary>First pair: the day by which the teacher looks at them; null otherwise.</summary>
    public DateOnly? TeacherLookBy { get; init; }

    /// <summary>When to come back for a look at how the fit held.</summary>
    public DateOnly? LookOn { get; init; }

    /// <summary>When growing feet are measured again; null for grown feet.</summary>
    public DateOnly? MeasureAgainOn { get; init; }

    /// <summary>Why the fitter decided otherwise than advised, in her words; null where she did not.</summary>
    public string? FitterDecided { get; init; }

    /// <summary>Set where a smaller size was asked for than was advised.</summary>
    public SheetSmallerSize? SmallerSize { get; init; }
}

/// <summary>Whose sheet it is.</summary>
public sealed record SheetDancer
{
    /// <summary>What she is called; the heading uses it.</summary>
    public required string FirstName { get; init; }

    /// <summary>Her whole name.</summary>
    public required string FullName { get; init; }

    /// <summary>Her teacher's name, where known.</summary>
    public string? Teacher { get; init; }

    /// <summary>Her studio, where known.</summary>
    public string? Studio { get; init; }

    /// <summary>Whether these are her first pointe shoes.</summary>
    public bool FirstPair { get; init; }
}

/// <summary>The shop, as the sheet names it.</summary>
public sealed record SheetShop
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Its address, in one line.</summary>
    public string? Address { get; init; }

    /// <summary>A telephone number or other way to reach it.</summary>
    public string? Contact { get; init; }
}

/// <summary>A size was asked for that is smaller than the one advised.</summary>
/// <param name="Asked">The label asked for, and sold.</param>
/// <param name="Advised">The label advised.</param>
public sealed record SheetSmallerSize(string Asked, string Advised);
