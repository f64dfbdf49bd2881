using System.Diagnostics;
using ShopFit.Seed;

var folder = args.Length == 1 ? args[0] : "seed";
var watch = Stopwatch.StartNew();
var sizes = DemoCatalogue.Sizes();
var people = DemoPeople.Invent();
var diary = DemoDiary.Write(people, sizes, DemoGoods.Read(await File.ReadAllTextAsync(Path.Combine(folder, "haberdashery.csv"))));
(string Name, string Text)[] files =
[
    ("catalogue.csv", DemoCatalogue.CatalogueCsv(sizes)),
    ("shelf.csv", DemoCatalogue.ShelfCsv(sizes)),
    ("models.csv", DemoCatalogue.ModelsCsv()),
    ("studios.csv", DemoTables.Studios()),
    ("guardians.csv", DemoTables.Guardians(people)),
    ("dancers.csv", DemoTables.Dancers(people, diary.Fittings)),
    ("fittings.csv", DemoTables.Fittings(diary.Fittings)),
    ("readings.csv", DemoTables.Readings(diary.Fittings)),
    ("try-ons.csv", DemoTables.TryOns(diary.Fittings)),
    ("deliveries.csv", DemoTables.Deliveries(diary.Deliveries)),
];
foreach (var (name, text) in files)
{
    await File.WriteAllTextAsync(Path.Combine(folder, name), text);
}

foreach (var ending in diary.Fittings.GroupBy(fitting => $"{fitting.Ending?.Kind} {fitting.Ending?.Reason}".Trim()).OrderByDescending(group => group.Count()))
{
    Console.WriteLine($"{ending.Count(),5} {(ending.Key.Length > 0 ? ending.Key : "open")}");
}

Console.WriteLine($"{sizes.Count} sizes, {people.Dancers.Count} dancers, {diary.Fittings.Count} fittings in {watch.Elapsed.TotalSeconds:0} s.");
