using System.CommandLine;
using ShopFit.Web.Features.People;

namespace ShopFit.Web.CommandLine;

/// <summary>Lets another program ask this shop's questions.</summary>
internal static class AddApiKeyCommand
{
    public static Command Make()
    {
        var name = new Argument<string>("NAME") { Description = "What the key is called, to know it again." };
        var data = DataOption.Make();
        var command = new Command("add-api-key", "Makes a key with which another program may ask for shortlists. The key is printed once, alone on the last line, and kept nowhere.")
        {
            name,
            data,
        };
        command.SetAction((parsed, cancellationToken) => RunAsync(parsed.GetRequiredValue(name), parsed.GetValue(data), cancellationToken));
        return command;
    }

    private static async Task<int> RunAsync(string name, string? data, CancellationToken cancellationToken)
    {
        await using var shop = await CommandShop.OpenAsync(data, cancellationToken);
        switch (await shop.Get<AddApiKey>().RunAsync(shop.Actor, Guid.CreateVersion7(), name, cancellationToken))
        {
            case AddApiKeyOutcome.Added added:
                Console.WriteLine($"Send this key in the header {ApiKeyScheme.Header}. It is shown this once.");
                Console.WriteLine(added.Key);
                return 0;
            case AddApiKeyOutcome.NameTaken:
                throw new CommandException($"There is a key called \"{name}\" already. Choose another name.");
            default:
                throw new CommandException($"A key needs a name of 1 to {ApiKey.LongestName} characters.");
        }
    }
}
