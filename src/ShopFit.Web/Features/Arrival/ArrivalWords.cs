namespace ShopFit.Web.Features.Arrival;

/// <summary>Names the words of the first station: <c>ArrivalWords.resx</c>.</summary>
public sealed class ArrivalWords;
