using System.CommandLine;

namespace ShopFit.Web.CommandLine;

/// <summary>What can be asked of the program where it is started.</summary>
public static class ShopCommands
{
    private const int Failed = 1;

    /// <summary>Runs what the arguments ask for. Answers 0, or 1 after one line on the error stream.</summary>
    public static async Task<int> RunAsync(string[] args)
    {
        var parsed = Root().Parse(args);
        if (parsed.Errors.Count > 0)
        {
            return await FailAsync($"{parsed.Errors[0].Message} Try --help.");
        }

        try
        {
            // The host and the operating system end the program; a limit on the way out would cut off a write.
            return await parsed.InvokeAsync(new InvocationConfiguration { EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = null });
        }
        catch (Exception exception) when (!System.Diagnostics.Debugger.IsAttached)
        {
            return await FailAsync(OneLine.Of(exception));
        }
    }

    private static RootCommand Root()
    {
        var root = new RootCommand("ShopFit: fits dancers with shoes, and keeps the shelf. Without a command it serves the shop.");
        ServeCommand.FillIn(root);
        root.Subcommands.Add(AddApiKeyCommand.Make());
        root.Subcommands.Add(ImportCatalogueCommand.Make());
        return root;
    }

    private static async Task<int> FailAsync(string line)
    {
        await Console.Error.WriteLineAsync(line);
        return Failed;
    }
}
