using System.Text.Json.Serialization;

namespace ShopFit.Sheets.TakeHome;

/// <summary>The pair that was fitted.</summary>
public sealed record SheetPair
{
    /// <summary>The kind of footwear, by the id that the catalogue uses, such as <c>pointe</c>, <c>demi-pointe</c> or <c>soft</c>.</summary>
    public string Kind { get; init; } = "pointe";

    /// <summary>Who made it.</summary>
    public required string Maker { get; init; }

    /// <summary>The model.</summary>
    public required string Model { get; init; }

    /// <summary>The whole size label, width and other options with it.</summary>
    public required string Size { get; init; }

    /// <summary>What the maker calls its shank, where it has a name.</summary>
    public string? Shank { get; init; }

    /// <summary>What its box is made of; chooses the words on breaking in.</summary>
    public BoxConstruction Construction { get; init; } = BoxConstruction.Paste;

    /// <summary>Its inside, for the drawing of a shoe with a box; null where it is not known.</summary>
    public SheetShoe? Inside { get; init; }
}

/// <summary>What the box of a shoe is made of.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<BoxConstruction>))]
public enum BoxConstruction
{
    /// <summary>Paper, cloth and paste: it softens as it is worn.</summary>
    Paste = 0,

    /// <summary>Moulded: it needs no breaking in.</summary>
    Moulded = 1,

    /// <summary>There is no box: a soft shoe.</summary>
    None = 2,
}

/// <summary>The inside of a shoe in mm, as far as its drawing needs it.</summary>
public sealed record SheetShoe
{
    /// <summary>Inner length, mm.</summary>
    public required double Length { get; init; }

    /// <summary>Breadth of the box over the toes, mm.</summary>
    public required double BoxBreadth { get; init; }

    /// <summary>Girth at the joints, mm.</summary>
    public required double BallGirth { get; init; }

    /// <summary>Breadth of the heel, mm.</summary>
    public required double HeelBreadth { get; init; }

    /// <summary>How far the box falls back from the platform to the fourth toe, mm.</summary>
    public required double ToeSlope { get; init; }
}

/// <summary>One foot, in mm. What is null is drawn as such a foot usually is.</summary>
public sealed record SheetFoot
{
    /// <summary>Heel to the tip of the longest toe, mm; the sheet prints it.</summary>
    public required double Length { get; init; }

    /// <summary>Across the joints as drawn inside the shoe, mm: (ball girth − squeeze) / 2.46, so that the drawing says what the ease says.</summary>
    public double? BallBreadth { get; init; }

    /// <summary>Across the toes at the nail bases, mm.</summary>
    public double? ToeBreadth { get; init; }

    /// <summary>Widest part of the heel, mm.</summary>
    public double? HeelBreadth { get; init; }

    /// <summary>Heel to the joint of the big toe, mm.</summary>
    public double? HeelToBall { get; init; }

    /// <summary>Second toe tip ahead of the big toe tip, mm.</summary>
    public double? SecondToeLead { get; init; }

    /// <summary>From the longest toe tip back to the fourth, mm.</summary>
    public double? ToeSlope { get; init; }
}
