using ShopFit.Fitting.Feet;

namespace ShopFit.Seed;

/// <summary>The people of the demo shop beside those who stand in people.json.</summary>
internal sealed class DemoPeople
{
    /// <summary>How many of which age there are, and who of them are boys or men.</summary>
    private static readonly (int Count, int FromAge, int ToAge, Sex Sex, (DemoPath What, double Weight)[] Paths)[] Groups =
    [
        (34, 7, 11, Sex.Female, [(DemoPath.Ballet, 4), (DemoPath.Stage, 1)]),
        (6, 8, 11, Sex.Male, [(DemoPath.Ballet, 1), (DemoPath.Stage, 1)]),
        (42, 12, 17, Sex.Female, [(DemoPath.Ballet, 12), (DemoPath.Stage, 1)]),
        (6, 12, 17, Sex.Male, [(DemoPath.Ballet, 1), (DemoPath.Stage, 1)]),
        (19, 18, 34, Sex.Female, [(DemoPath.Experienced, 3), (DemoPath.GrownBeginner, 1)]),
        (16, 28, 58, Sex.Female, [(DemoPath.GrownBeginner, 3), (DemoPath.Experienced, 1)]),
        (1, 60, 60, Sex.Female, [(DemoPath.GrownBeginner, 1)]),
        (13, 18, 57, Sex.Male, [(DemoPath.GrownBeginner, 1), (DemoPath.Stage, 1)]),
    ];

    /// <summary>One minor in so many has a brother or sister on file *(cp)*.</summary>
    private const double HasSibling = 0.33;

    /// <summary>So that no leap year makes anybody younger than they should be when the dates are moved.</summary>
    private const int DaysAfterBirthday = 3;

    private readonly List<DemoDancer> _dancers = [];
    private readonly List<DemoGuardian> _guardians = [];
    private readonly HashSet<string> _names = new(StringComparer.Ordinal);
    private readonly DemoRandom _families = DemoRandom.Of("families");
    private string _family = "";

    private DemoPeople()
    {
        // The first of a group is as young as the group goes. Children are mixed, so that sisters and brothers differ in age.
        var wanted = Groups.SelectMany(group => Enumerable.Range(0, group.Count)
            .Select(index => (Age: index == 0 ? group.FromAge : _families.Between(group.FromAge, group.ToAge), group.Sex, group.Paths, Turn: _families.Next()))).ToList();
        foreach (var (age, sex, paths, _) in wanted.OrderBy(one => one.Age >= 18).ThenBy(one => one.Turn))
        {
            Add(age, sex, paths);
        }
    }

    internal IReadOnlyList<DemoDancer> Dancers => _dancers;

    internal IReadOnlyList<DemoGuardian> Guardians => _guardians;

    internal static DemoPeople Invent() => new();

    private void Add(int age, Sex sex, (DemoPath What, double Weight)[] paths)
    {
        var key = $"d{_dancers.Count + 1:D3}";
        var random = DemoRandom.Of($"dancer {key}");
        var born = DemoCalendar.AsOf.AddYears(-age).AddDays(-random.Between(20, 340));
        var isMinor = age < 18;
        var isSibling = isMinor && _guardians.Count > 0 && _dancers[^1].IsMinor && _families.Chance(HasSibling);
        _family = isSibling ? _family : DemoNames.Family(_families);
        if (isMinor && !isSibling)
        {
            _guardians.Add(GuardianOf($"g{_guardians.Count + 1:D3}"));
        }

        var studio = isSibling ? _dancers[^1].Studio : random.Pick(DemoStudios.All);
        var name = NameOf(key, sex == Sex.Female ? DemoNames.Girls : DemoNames.Boys, random);
        _dancers.Add(new DemoDancer
        {
            Key = key,
            Name = name,
            KnownAs = random.Chance(0.08) ? name[..Math.Min(3, name.Length)] : "",
            Born = born,
            Sex = sex,
            Studio = studio,
            Teacher = random.Pick(studio.Teachers),
            Guardian = isMinor ? _guardians[^1].Key : "",
            Path = random.Pick(paths),
            Arrives = ArrivalOf(born.AddYears(isMinor ? 7 : 18), isSibling ? _dancers[^1].Arrives : null, random),
        });
    }

    private DemoGuardian GuardianOf(string key)
    {
        var name = $"{_families.Pick(DemoNames.Grown)} {_family}";

        // Numbers that the United Kingdom keeps free for fiction, and a domain that nobody can have.
        var contact = _families.Chance(0.7) ? $"01632 960{_families.Between(200, 999):D3}" : $"{key}@home.example";
        return new DemoGuardian(key, name, contact);
    }

    private string NameOf(string key, IReadOnlyList<string> given, DemoRandom random)
    {
        if (key == "d058")
        {
            return DemoNames.TheLongest;
        }

        while (true)
        {
            var first = random.Pick(given);
            var name = $"{first} {_family}";
            if (_names.Add(name))
            {
                return name;
            }
        }
    }

    // Half were here before the history began; the others came since. Children come from seven on, the grown when they are grown.
    private static DateOnly ArrivalOf(DateOnly oldEnough, DateOnly? sibling, DemoRandom random)
    {
        var days = DemoCalendar.AsOf.DayNumber - DemoCalendar.First.DayNumber - 30;
        var day = sibling ?? DemoCalendar.First.AddDays(2 + (random.Chance(0.5) ? random.Below(110) : random.Below(days)));
        var visit = sibling ?? DemoCalendar.VisitNear(day, random);
        var earliest = oldEnough.AddDays(DaysAfterBirthday);
        earliest = earliest > DemoCalendar.First ? earliest : DemoCalendar.First.AddDays(2);
        return visit < earliest ? DemoCalendar.Open(earliest) : visit;
    }
}
