using ShopFit.Fitting.Feet;

namespace ShopFit.Seed;

/// <summary>What the fitter writes down at the end, in her words. None has a comma, so that the files need no quotes.</summary>
internal static class DemoWhy
{
    private static readonly string[] Pointe =
    [
        "Level on the platform at once and nothing presses.", "Held at the joints; the toes lie long.", "The box holds and the heel stays on in the rise.", "A little fabric at the heel and no more.",
        "The throat lies flat when the knees bend.", "Half a size on from the last pair.", "The same last with a stronger shank.", "The wider one: the joints lie side by side now.",
        "The shorter vamp lets the half toe through.", "The longer vamp keeps the arch back.", "No sinking after eight rises.", "The quietest of those tried.",
    ];

    private static readonly string[] Soft =
    [
        "Flat to the floor with nothing to grow into.", "The toes lie long and the heel stays on.", "One step on from the last pair.", "The wider of the two spreads at the landing.", "No folds under the arch.",
    ];

    private static readonly string[] Heeled =
    [
        "Steady on the heel and room for the toes.", "The strap closes in the middle hole.", "Holds at the heel in the turn.", "Room at the front as a heel needs.",
    ];

    private static readonly string[] ComeBack =
    [
        "Comes back when the next delivery is here.", "Comes back with the teacher after the half term.", "Comes back in three weeks: the feet have grown in one week.", "Comes back with class tights on.",
    ];

    private static readonly string[] NotOnShelf =
    [
        "Half a size longer than what is here.", "Needs the next width up and it is not here.", "Needs a stiffer shank in this size.", "All that is here is too wide at the heel.", "The size is here in the wrong vamp only.",
    ];

    private static readonly string[] Price = ["Fits well; over what the family can spend before the show.", "Wants to ask at home about the price.", "Would take it in the sale."];

    private static readonly string[] NotReady =
    [
        "The teacher would like another term on the flat first. We keep the readings.", "No word from the teacher yet. Soft shoes until then.", "Began again after a long break. The teacher decides in spring.",
    ];

    private static readonly string[] Sore = ["A sore nail; we wait until it has healed.", "The ankle hurts today. A clinician looks first.", "A blister from the last pair; we try nothing on."];

    private static readonly string[] Undecided = ["Two pairs fit; thinks about it over the weekend.", "Wants the teacher to see it first.", "Not sure about the feel of the box."];

    internal static string Sold(string kind, DemoRandom random) => random.Pick(kind switch
    {
        "pointe" or "demi-pointe" => Pointe,
        "tap" or "character" => Heeled,
        _ => Soft,
    });

    internal static string Order(Side longer, DemoRandom random) => random.Chance(0.5)
        ? $"Not here today; the {(longer == Side.Left ? "left" : "right")} foot decides the size."
        : "The nearest on the shelf is not near enough; ordered.";

    internal static string Back(DemoRandom random) => random.Pick(ComeBack);

    internal static string Not(string reason, DemoRandom random) => random.Pick(reason switch
    {
        "not-on-shelf" => NotOnShelf,
        "price" => Price,
        "not-ready" => NotReady,
        "sore" => Sore,
        _ => Undecided,
    });
}
