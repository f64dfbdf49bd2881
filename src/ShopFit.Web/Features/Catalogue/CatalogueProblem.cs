namespace ShopFit.Web.Features.Catalogue;

/// <summary>Something in a catalogue file that cannot be taken.</summary>
/// <param name="Line">The line, the header being line 1.</param>
/// <param name="Column">The column's name, or null where it is about the whole line or file.</param>
/// <param name="Sentence">What is wrong, with the value and what is allowed.</param>
public sealed record CatalogueProblem(int Line, string? Column, string Sentence);
