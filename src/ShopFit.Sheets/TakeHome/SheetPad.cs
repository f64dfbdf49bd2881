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

    /// <summary>Its stable id, such as <c>joint-cushion</c>; says where it is drawn. A pad that the shop added has no place on the drawing.</summary>
    public required string Id { get; init; }

    /// <summary>Its name, such as "joint cushion".</summary>
    public required string Name { get; init; }

    /// <summary>Where it goes, in words, such as "at both sides of the joints".</summary>
    public required string Where { get; init; }
}
