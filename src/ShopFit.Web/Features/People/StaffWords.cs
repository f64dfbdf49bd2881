namespace ShopFit.Web.Features.People;

/// <summary>Names the words of the page of people and keys: <c>StaffWords.resx</c>.</summary>
public sealed class StaffWords;
