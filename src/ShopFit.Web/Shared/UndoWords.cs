namespace ShopFit.Web.Shared;

/// <summary>Names the words of undoing: <c>UndoWords.resx</c>.</summary>
public sealed class UndoWords;
