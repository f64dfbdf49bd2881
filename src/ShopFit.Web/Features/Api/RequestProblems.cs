namespace ShopFit.Web.Features.Api;

/// <summary>What is wrong with the body of a request, by JSON pointer (RFC 6901).</summary>
internal sealed class RequestProblems
{
    /// <summary>How many are told; a body that is wrong throughout needs no longer list.</summary>
    public const int MostTold = 50;

    private readonly SortedDictionary<string, List<string>> _byPointer = new(StringComparer.Ordinal);
    private int _told;

    public bool Any => _told > 0;

    public void Add(string pointer, string sentence)
    {
        if (_told == MostTold)
        {
            return;
        }

        _told++;
        if (!_byPointer.TryGetValue(pointer, out var sentences))
        {
            _byPointer.Add(pointer, sentences = []);
        }

        sentences.Add(sentence);
    }

    public IDictionary<string, string[]> ToDictionary() =>
        _byPointer.ToDictionary(problem => problem.Key, problem => problem.Value.ToArray(), StringComparer.Ordinal);
}
