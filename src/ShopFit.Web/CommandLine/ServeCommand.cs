using System.CommandLine;
using ShopFit.Web.Data;
using ShopFit.Web.Features.Demo;

namespace ShopFit.Web.CommandLine;

/// <summary>Serves the shop until it is told to stop.</summary>
internal static class ServeCommand
{
    private const string Loopback = "http://127.0.0.1:5080";

    public static void FillIn(Command command)
    {
        var demo = new Option<bool>("--demo")
        {
            Description = "Serves an invented shop with people, shoes and dancers, in a folder of its own; a folder that holds a real shop is left alone.",
        };
        var urls = new Option<string>("--urls")
        {
            Description = "Addresses to listen on, parted by semicolons. Anything but this machine itself needs a proxy with TLS before it.",
            HelpName = "ADDRESSES",
            DefaultValueFactory = _ => Loopback,
        };
        var data = DataOption.Make();
        command.Options.Add(demo);
        command.Options.Add(urls);
        command.Options.Add(data);
        command.SetAction((parsed, cancellationToken) =>
            RunAsync(ShopFolder.At(parsed.GetValue(data), parsed.GetValue(demo)), parsed.GetRequiredValue(urls), cancellationToken));
    }

    private static async Task<int> RunAsync(ShopFolder folder, string urls, CancellationToken cancellationToken)
    {
        Check(urls);
        var started = false;
        await using var app = ShopSite.Build(folder, urls, builder =>
        {
            // What hinders the start is said in one line by the caller; the host would print the whole stack.
            builder.Logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", level => started && level >= LogLevel.Warning);
        });

        if (folder.IsDemo && !await app.Services.GetRequiredService<DemoShop>().OpenAsync(cancellationToken))
        {
            throw new CommandException($"\"{folder.Path}\" holds a real shop. The demo needs a folder of its own: leave out --data, or name another.");
        }

        await app.StartAsync(cancellationToken);
        started = true;

        foreach (var address in app.Urls)
        {
            Console.WriteLine($"The shop is open at {address}");
        }

        if (folder.IsDemo)
        {
            Console.WriteLine($"Demo: sign in as \"{DemoPeople.Fitter.UserName}\" with \"{DemoPeople.Fitter.Password}\", or as \"{DemoPeople.Manager.UserName}\" with \"{DemoPeople.Manager.Password}\"");
        }

        Console.WriteLine("Stop it with Ctrl+C.");
        await app.WaitForShutdownAsync(cancellationToken);
        return 0;
    }

    private static void Check(string urls)
    {
        foreach (var url in urls.Split(';', StringSplitOptions.TrimEntries))
        {
            try
            {
                BindingAddress.Parse(url);
            }
            catch (FormatException exception)
            {
                throw new CommandException($"\"{url}\" is no address to listen on. One looks like {Loopback}.", exception);
            }
        }
    }
}
