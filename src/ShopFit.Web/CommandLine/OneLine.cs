using System.Net.Sockets;
using Microsoft.AspNetCore.Connections;
using Microsoft.Data.Sqlite;

namespace ShopFit.Web.CommandLine;

/// <summary>Says in one line what went wrong, for whoever started the program.</summary>
internal static class OneLine
{
    // Primary result codes of SQLite, https://www.sqlite.org/rescode.html
    private const int Busy = 5;
    private const int Locked = 6;
    private const int ReadOnly = 8;
    private const int Corrupt = 11;
    private const int Full = 13;
    private const int CannotOpen = 14;
    private const int NotADatabase = 26;

    public static string Of(Exception exception) => Sentence(exception).ReplaceLineEndings(" ").Trim();

    private static string Sentence(Exception exception) => exception switch
    {
        CommandException or TimeoutException => exception.Message,
        OperationCanceledException => "It was told to stop before it was ready.",
        SqliteException database => Database(database),
        IOException { InnerException: AddressInUseException } => "That address is in use already: another program listens there. Choose another with --urls.",
        SocketException { SocketErrorCode: SocketError.AccessDenied } => "This user may not listen there. Choose another port with --urls, above 1023.",
        SocketException { SocketErrorCode: SocketError.AddressNotAvailable } or IOException { InnerException: SocketException { SocketErrorCode: SocketError.AddressNotAvailable } } =>
            "This machine has no such address. Choose another with --urls.",
        UnauthorizedAccessException => $"No permission: {exception.Message}",
        IOException => $"The file or folder cannot be used: {exception.Message}",
        { InnerException: { } inner } => Sentence(inner),
        _ => $"Something unforeseen happened: {exception.GetType().Name}: {exception.Message}",
    };

    private static string Database(SqliteException exception) => exception.SqliteErrorCode switch
    {
        Busy or Locked => "Another program holds the database. Close it and try again.",
        ReadOnly => "The database cannot be written: it or its folder is read-only.",
        Corrupt or NotADatabase => "The database file is damaged or is no database. Nothing was changed; bring back a backup or choose another folder with --data.",
        Full => "The disk is full.",
        CannotOpen => "The database cannot be opened: look whether its folder is there and may be written.",
        _ => $"The database does not answer: {exception.Message}",
    };
}
