using System.Text.Json.Serialization;
using ShopFit.Fitting.Feet;

namespace ShopFit.Sheets.TakeHome;

/// <summary>A pad, the shoe it goes into and where.</summary>
public sealed record SheetPad
{
    /// <summary>The number that the drawing gives it, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>The shoe it goes into.</summary>
    [JsonConverter(typeof(JsonStringEnumConverter<Side>))]
    public required Side Foot { get; init; }

    /// <summary>Its stable id, such as <c>joint-cushion</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Its name, such as "joint cushion".</summary>
    public required string Name { get; init; }

    /// <summary>Where it goes, in words, such as "at both sides of the joints".</summary>
    public required string Where { get; init; }

    /// <summary>Where it is drawn.</summary>
    public PadPlace Place { get; init; }
}

/// <summary>The place of the foot at which a pad is drawn.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<PadPlace>))]
public enum PadPlace
{
    /// <summary>Nowhere on the drawing: the words alone say where.</summary>
    NotDrawn = 0,

    /// <summary>Under the tips of the toes, with a hollow for the second.</summary>
    SecondToe = 1,

    /// <summary>Under the tip of the big toe.</summary>
    BigToe = 2,

    /// <summary>Over all toes.</summary>
    AllToes = 3,

    /// <summary>At the back of the heel.</summary>
    HeelBack = 4,

    /// <summary>At both sides of the joints.</summary>
    JointSides = 5,

    /// <summary>At both sides of the toes.</summary>
    ToeSides = 6,

    /// <summary>Over the tips of the toes.</summary>
    ToeTips = 7,

    /// <summary>Between the big toe and the second.</summary>
    BetweenToes = 8,
}
