using System.CommandLine;
using ShopFit.Benchmarks;

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
return await root.Parse(args).InvokeAsync();
