namespace ShopFit.Seed;

/// <summary>A studio that does not exist.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Teachers">Who teaches there.</param>
/// <param name="Colour">The colour that the teacher asks for; may be empty.</param>
/// <param name="Ribbon">The ribbon and elastic that the teacher asks for; may be empty.</param>
/// <param name="Wishes">What else the teacher asks for; may be empty.</param>
/// <param name="Asked">Models that the teacher asks for.</param>
/// <param name="NotWanted">Models that the teacher does not want to see.</param>
internal sealed record DemoStudio(
    string Name,
    IReadOnlyList<string> Teachers,
    string Colour,
    string Ribbon,
    string Wishes,
    IReadOnlyList<string> Asked,
    IReadOnlyList<string> NotWanted);

/// <summary>The six studios of the demo shop.</summary>
internal static class DemoStudios
{
    internal static IReadOnlyList<DemoStudio> All { get; } =
    [
        new("Larch", ["Odile Marchpane"], "pale pink", "ribbons sewn before the first class", "", ["Moorlace", "Larkmoor"], []),
        new("Millrace", ["Anselm Ruddock-Hay"], "", "", "", [], []),
        new("Copperbeech", ["Beatrix Lowfold", "Idris Vane-Tollard"], "the colour of the dancer’s skin", "elastic across the arch in every soft shoe", "", [], ["Ambersall", "Velloway", "Saddlecombe"]),
        new("Saltmarsh Row", ["Perpetua Adeyinwold"], "", "two elastics crossed at the ankle", "No drawstring left hanging.", ["Harrowfen"], []),
        new("Thornapple Hall", ["Cosmo Llewarren", "Ysolde Brackenbury-Tam"], "pale pink", "", "A new pair is shown before it is sewn.", [], ["Sedgewing"]),
        new("The Old Ropewalk", ["Rufina O’Dunnelly"], "tan or brown", "", "Grown beginners wear soft shoes for a year.", ["Rushlight"], []),
    ];

    internal static DemoStudio Find(string name) => All.Single(studio => studio.Name == name);
}
