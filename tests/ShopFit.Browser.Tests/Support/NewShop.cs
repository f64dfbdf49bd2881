namespace ShopFit.Browser.Support;

/// <summary>The real program as it is on its first day: nobody can sign in yet, and nothing is on file.</summary>
public sealed class NewShop() : RunningShop(withDemo: false);
