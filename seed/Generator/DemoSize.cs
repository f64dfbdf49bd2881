namespace ShopFit.Seed;

/// <summary>One size of one model: a row of the catalogue and its place on the shelf.</summary>
/// <param name="Sku">The shop's own code.</param>
/// <param name="Maker">Its maker.</param>
/// <param name="Model">Its model.</param>
/// <param name="Size">Its label.</param>
/// <param name="Width">Its width.</param>
/// <param name="Vamp">Its vamp.</param>
/// <param name="Shank">Its shank.</param>
/// <param name="Gtin">Thirteen digits, the last the check digit.</param>
/// <param name="OnHand">Pairs on the shelf.</param>
internal sealed record DemoSize(
    string Sku,
    DemoMaker Maker,
    DemoModel Model,
    double Size,
    DemoChoice Width,
    DemoChoice Vamp,
    DemoChoice Shank,
    string Gtin,
    int OnHand)
{
    /// <summary>Whether its inside is known in mm, not from the label alone.</summary>
    internal bool HasSample => Model.Sample is { } sample && Size >= sample.From && Size <= sample.To;

    /// <summary>Where it stands, or would stand.</summary>
    internal string Place => Model.Places.Last(place => place.From <= Size).Place;
}
