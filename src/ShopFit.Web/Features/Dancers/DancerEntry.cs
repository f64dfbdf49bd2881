using ShopFit.Fitting.Feet;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Shared;

namespace ShopFit.Web.Features.Dancers;

/// <summary>The lines of a dancer's form, as they are typed.</summary>
public sealed class DancerEntry
{
    public string Name { get; set; } = "";

    public string KnownAs { get; set; } = "";

    /// <summary>The day of birth as it was typed.</summary>
    public string Born { get; set; } = "";

    public bool? UnderAge { get; set; }

    public Sex? Sex { get; set; } = ShopFit.Fitting.Feet.Sex.Female;

    public string Studio { get; set; } = "";

    public string Teacher { get; set; } = "";

    public Guid? GuardianId { get; set; }

    public string GuardianName { get; set; } = "";

    public string GuardianContact { get; set; } = "";

    /// <summary>Nobody but whoever answers for the dancer sets this, by a tap of its own.</summary>
    public bool ConsentGiven { get; set; }

    /// <summary>What is on file.</summary>
    public static DancerEntry Of(SeenDancer dancer) => new()
    {
        Name = dancer.Name,
        KnownAs = dancer.KnownAs,
        Born = dancer.BirthDate is { } born ? dancer.Time.Date(born) : "",
        UnderAge = dancer.BirthDate is null ? dancer.UnderAge : null,
        Sex = dancer.Sex,
        Studio = dancer.Studio,
        Teacher = dancer.Teacher,
        GuardianId = dancer.GuardianId,
        GuardianName = dancer.GuardianName,
        GuardianContact = dancer.GuardianContact,
    };

    /// <summary>The day of birth; null where none was typed, or none that is a day.</summary>
    public DateOnly? BirthDate(ShopTime time, DateOnly today) => TypedDay.TryRead(Born, time.MonthFirst, today, out var born) ? born : null;

    /// <summary>Something was typed as the day of birth that is no day.</summary>
    public bool IsBornUnclear(ShopTime time, DateOnly today) => !string.IsNullOrWhiteSpace(Born) && BirthDate(time, today) is null;

    /// <summary>Whether somebody else answers for the dancer.</summary>
    public bool IsMinor(ShopTime time, DateOnly today) =>
        BirthDate(time, today) is { } born ? RegisterDancer.IsMinor(born, today) : string.IsNullOrWhiteSpace(Born) && UnderAge is true;

    /// <summary>All of it as the actions take it.</summary>
    public RegisterDancerRequest ToRequest(ShopTime time, DateOnly today)
    {
        var minor = IsMinor(time, today);
        return new RegisterDancerRequest
        {
            Name = Name,
            KnownAs = KnownAs,
            BirthDate = BirthDate(time, today),
            UnderAge = UnderAge,
            Sex = Sex,
            Studio = Studio,
            Teacher = Teacher,
            GuardianId = minor ? GuardianId : null,
            GuardianName = minor ? GuardianName : "",
            GuardianContact = minor ? GuardianContact : "",
            ConsentGiven = minor && ConsentGiven,
        };
    }
}
