namespace ShopFit.Web.Shared;

/// <summary>A place along the way: its name, its address, and whether it is where one is.</summary>
public sealed record Station(string Name, string Address, bool Here);
