namespace ShopFit.Web.Features.People;

/// <summary>Names the words of the sign-in pages: <c>PeopleWords.resx</c>.</summary>
public sealed class PeopleWords;
