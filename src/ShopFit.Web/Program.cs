using ShopFit.Web.CommandLine;

return await ShopCommands.RunAsync(args);
