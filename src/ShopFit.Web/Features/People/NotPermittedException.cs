namespace ShopFit.Web.Features.People;

/// <summary>Something was asked for by somebody who may not have it. Pages do not offer what is not permitted, so this is no ordinary ending.</summary>
public sealed class NotPermittedException : Exception
{
    public NotPermittedException()
    {
    }

    public NotPermittedException(string message)
        : base(message)
    {
    }

    public NotPermittedException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
