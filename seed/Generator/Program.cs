using ShopFit.Seed;

var folder = args.Length == 1 ? args[0] : "seed";
var sizes = DemoCatalogue.Sizes();
await File.WriteAllTextAsync(Path.Combine(folder, "catalogue.csv"), DemoCatalogue.CatalogueCsv(sizes));
await File.WriteAllTextAsync(Path.Combine(folder, "shelf.csv"), DemoCatalogue.ShelfCsv(sizes));
await File.WriteAllTextAsync(Path.Combine(folder, "models.csv"), DemoCatalogue.ModelsCsv());
Console.WriteLine($"{sizes.Count} sizes, {sizes.Sum(size => size.OnHand)} pairs on the shelf.");
