using System.CommandLine;
using ShopFit.Benchmarks;
using ShopFit.Benchmarks.TryOns;

var root = new RootCommand("Measures the speed and the accuracy of ShopFit. Compare numbers of one run only: machines differ and are shared.");
var score = new Command("score", "How fast feet are scored against forms, and how long a shortlist over 20,000 sizes takes.");
score.SetAction(_ => ScoreBenchmark.Run(Console.Out));
root.Subcommands.Add(score);
var import = new Command("import", "How long the program takes to import a catalogue file of 20,000 rows into an empty shop, and the same file again.");
import.SetAction((_, cancellationToken) => ImportBenchmark.RunAsync(Console.Out, cancellationToken));
root.Subcommands.Add(import);
var calibration = new Command("calibration", "Whether chances come true: drawn dancers, drawn shoes, quick readings, and the share of pairs that really fit.");
calibration.SetAction(_ => CalibrationBenchmark.Run(Console.Out));
root.Subcommands.Add(calibration);
var catalogue = new Command("catalogue", "How long what the catalogue pages ask takes with 20,000 sizes on file.");
catalogue.SetAction((_, cancellationToken) => CatalogueBenchmark.RunAsync(Console.Out, cancellationToken));
root.Subcommands.Add(catalogue);
var shops = new Option<int>("--shops") { DefaultValueFactory = _ => 6, Description = "How many invented shops." };
var dancers = new Option<int>("--dancers") { DefaultValueFactory = _ => 50, Description = "How many dancers come to each." };
var seed = new Option<int>("--seed") { DefaultValueFactory = _ => 1, Description = "Where the drawing starts." };
var survey = new Option<string?>("--survey") { Description = "A table of surveyed feet, one row each; its feet are fitted besides the drawn ones." };
var tryOns = new Command("try-ons", "How many pairs are tried until one fits: by the model, by the size chart, by one who knows the feet or the shoes.") { shops, dancers, seed, survey };
tryOns.SetAction(parsed => TryOnsBenchmark.Run(Console.Out, new(
    parsed.GetValue(shops), parsed.GetValue(dancers), Sizes: 1_650, OnShelf: 700, Misread: 0.05, parsed.GetValue(survey), parsed.GetValue(seed))));
root.Subcommands.Add(tryOns);
return await root.Parse(args).InvokeAsync();
