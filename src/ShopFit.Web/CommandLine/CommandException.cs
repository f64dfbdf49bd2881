namespace ShopFit.Web.CommandLine;

/// <summary>A command cannot do what was asked; the message is the one line that says why.</summary>
public sealed class CommandException : Exception
{
    public CommandException()
    {
    }

    public CommandException(string message)
        : base(message)
    {
    }

    public CommandException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
