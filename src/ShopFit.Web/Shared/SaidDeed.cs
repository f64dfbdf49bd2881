namespace ShopFit.Web.Shared;

/// <summary>A deed that hurt, as it is said.</summary>
/// <param name="Sentence">What was done.</param>
public abstract record SaidDeed(string Sentence);

/// <summary>It was done, and can be undone.</summary>
/// <param name="Sentence">What was done.</param>
/// <param name="Undo">The way back; false where it can no longer be gone.</param>
public sealed record OfferedDeed(string Sentence, Func<Task<bool>> Undo) : SaidDeed(Sentence);

/// <summary>It was undone just now.</summary>
/// <param name="Sentence">What had been done.</param>
public sealed record UndoneDeed(string Sentence) : SaidDeed(Sentence);

/// <summary>It could no longer be undone.</summary>
/// <param name="Sentence">What was done.</param>
public sealed record LastingDeed(string Sentence) : SaidDeed(Sentence);
