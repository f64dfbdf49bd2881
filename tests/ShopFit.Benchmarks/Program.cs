using System.CommandLine;

var root = new RootCommand("Measures the speed and the accuracy of ShopFit. Compare numbers of one run only: machines differ and are shared.");
return await root.Parse(args).InvokeAsync();
