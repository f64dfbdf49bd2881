using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;

namespace ShopFit.Web.Features.Api;

/// <summary>Lists of ids that a member may hold; what the OpenAPI document calls an enumeration.</summary>
internal enum IdList
{
    Feet,
    Traits,
    Units,
    SizeSystems,
    Sexes,
    Checks,
    Observers,
    Pads,
    Criteria,
    Kinds,
    From,
    Notices,
}

/// <summary>Says that a text is one of a list of ids.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class IdListAttribute(IdList list) : Attribute
{
    public IdList List => list;

    /// <summary>The ids themselves, those of the standard fit numbers where a shop may have changed them.</summary>
    public IEnumerable<string> Ids => list switch
    {
        IdList.Feet => ShortlistRequestReader.Feet,
        IdList.Traits => Traits.All.Select(row => row.Id),
        IdList.Units => ShortlistRequestReader.Units,
        IdList.SizeSystems => SizeSystem.All.Select(system => system.Id),
        IdList.Sexes => ShortlistRequestReader.Sexes,
        IdList.Checks => FitDefaults.Standard.Checks.Select(check => check.Id),
        IdList.Observers => ShortlistRequestReader.Observers,
        IdList.Pads => FitDefaults.Standard.Pads.Select(pad => pad.Id),
        IdList.Criteria => FitDefaults.Standard.Kinds.SelectMany(kind => kind.Criteria).Select(criterion => criterion.Id).Distinct(StringComparer.Ordinal),
        IdList.Kinds => FitDefaults.Standard.Kinds.Select(kind => kind.Id),
        IdList.From => ShortlistRequestReader.Sources,
        _ =>
        [
            Fittings.ShortlistNotices.ForLater, Fittings.ShortlistNotices.FirstPair, Fittings.ShortlistNotices.AgeUnknown, Fittings.ShortlistNotices.SexUnknown,
            Fittings.ShortlistNotices.NothingRead, Fittings.ShortlistNotices.DoubtfulReading, Fittings.ShortlistNotices.NoSuchShoes, Fittings.ShortlistNotices.FewOnShelf,
        ],
    };
}
