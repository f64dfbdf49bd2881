namespace ShopFit.Web.Features.Arrival;

/// <summary>Something that is asked when a dancer sits down.</summary>
/// <param name="Id">Its name in the rows.</param>
/// <param name="Answers">The answers that are offered; none where it is answered in words or with a day.</param>
/// <param name="EachFoot">Asked of each foot by itself.</param>
/// <param name="Several">Whether several answers may stand at once.</param>
public sealed record ArrivalQuestion(string Id, IReadOnlyList<string> Answers, bool EachFoot = false, bool Several = false)
{
    public bool InWords => Answers.Count is 0;
}
