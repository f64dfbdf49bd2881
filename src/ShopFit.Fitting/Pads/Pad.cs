namespace ShopFit.Fitting.Pads;

/// <summary>What a pad does to the eases of the foot it is put under.</summary>
/// <param name="Id">Stable id, such as <c>heel-cushion</c>.</param>
/// <param name="Effects">Shift of the ease by criterion id, mm.</param>
/// <param name="Bulk">How much padding it is, in units.</param>
/// <param name="Corrects">Whether it may be proposed as a correction.</param>
public sealed record Pad(string Id, IReadOnlyDictionary<string, double> Effects, double Bulk, bool Corrects = true);
