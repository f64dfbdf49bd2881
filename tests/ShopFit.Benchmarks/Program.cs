using System.CommandLine;
using ShopFit.Benchmarks;

var root = new RootCommand("Measures the speed and the accuracy of ShopFit. Compare numbers of one run only: machines differ and are shared.");
var score = new Command("score", "How fast feet are scored against forms, and how long a shortlist over 20,000 sizes takes.");
score.SetAction(_ => ScoreBenchmark.Run(Console.Out));
root.Subcommands.Add(score);
return await root.Parse(args).InvokeAsync();
