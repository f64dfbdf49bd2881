namespace ShopFit.Web.Data;

/// <summary>Marks the outcomes that changed nothing: what was begun is undone, and the command may be sent again.</summary>
public interface IRefusal;
