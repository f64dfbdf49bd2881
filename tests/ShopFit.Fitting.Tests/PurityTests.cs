namespace ShopFit.Fitting;

public class PurityTests
{
    [Fact]
    public void The_library_references_only_the_base_class_library() =>
        Assert.All(
            typeof(Measures.Millimetres).Assembly.GetReferencedAssemblies(),
            reference => Assert.StartsWith("System.", reference.Name, StringComparison.Ordinal));
}
