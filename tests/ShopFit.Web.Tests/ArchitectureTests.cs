using System.Reflection;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

namespace ShopFit.Web;

public class ArchitectureTests
{
    // These two are where the screen's way of knowing who signed in meets the rest.
    private static readonly Type[] KnowWhoSignedIn = [typeof(CurrentActor), typeof(CircuitSignIn)];

    // Seen whole in the browser only: the document, and the way from an address to a page, which every browser test opens and takes.
    private static readonly string[] SeenByEveryBrowserTest = ["App", "Routes"];

    // These have no tests of their own yet; some are seen through those of their parents. Each leaves the list with the tests of its own.
    private static readonly string[] StillWithoutTests =
    [
        "AskedSizePart", "BagTotal", "BareLayout", "CataloguePage", "ChangesPage", "ChangesTable", "ChildView", "DancerField", "DancerForm", "DancersPage",
        "DecisionPanel", "DiscountPart", "EditDancerPage", "EndedFitting", "EndedRecord", "EndingDay", "EndingLine", "FitNumberField", "FitPage",
        "LabelsPage", "LedgerPage", "MainLayout", "ModelPage", "NewKeyForm", "NewPersonForm", "NewSalePage", "NotPermittedPage", "OtherEnding",
        "OverrulePart", "PairsInHand", "PersonPanel", "Pick", "PlaceLine", "PlainForm", "PriceField", "PriceHistory", "PublishedPage",
        "ReadinessPanel", "ReadingsList", "ReadingsRecord", "ReceiptKey", "SalePage", "SalesPage", "SampleHistory", "SamplePage", "SellKey",
        "ShelfPage", "ShoeDrawing", "ShopFieldTheirs", "ShopParts", "ShortlistPairs", "ShortlistRow", "SiblingDrafts", "SignOutPage", "SizePage",
        "SorePanel", "StudioPage", "StudiosPage", "SuggestedRecord", "TeacherPanel", "TraitField", "TriedPair", "TriedPairRecord", "VisitEntry",
    ];

    private static readonly Type[] AllTypes = typeof(ShopDbContext).Assembly.GetTypes();

    private static IEnumerable<Type> Components => AllTypes.Where(type => type.IsAssignableTo(typeof(IComponent)));

    // A component that is a file of markup stands under its own name and not inside another class.
    private static IEnumerable<string> ComponentNames => Components.Where(type => !type.IsNested && type.Assembly == typeof(ShopDbContext).Assembly).Select(type => type.Name);

    private static IEnumerable<string> Tested =>
        typeof(ArchitectureTests).Assembly.GetTypes().Where(type => type.Name.EndsWith("Tests", StringComparison.Ordinal)).Select(type => type.Name[..^"Tests".Length]);

    private static bool IsTheDatabase(Type type) =>
        type.IsAssignableTo(typeof(DbContext))
        || type == typeof(ShopContexts)
        || type == typeof(ShopWrites)
        || (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IDbContextFactory<>));

    [Fact]
    public void There_are_components_to_look_at() => Assert.True(Components.Count() > 5);

    [Fact]
    public void Pages_never_touch_the_database() =>
        Assert.Empty(
            from component in Components
            from property in component.GetProperties(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic)
            where property.IsDefined(typeof(InjectAttribute)) && IsTheDatabase(property.PropertyType)
            select $"{component.Name} injects {property.PropertyType.Name}");

    [Fact]
    public void Rules_and_queries_know_nothing_of_the_screen() =>
        Assert.Empty(
            from type in AllTypes.Except(Components).Except(KnowWhoSignedIn)
            where type.Namespace?.StartsWith("ShopFit.Web.Features", StringComparison.Ordinal) == true
            from constructor in type.GetConstructors()
            from parameter in constructor.GetParameters()
            where parameter.ParameterType.Namespace is { } name
                && (name.StartsWith("MudBlazor", StringComparison.Ordinal) || name.StartsWith("Microsoft.AspNetCore.Components", StringComparison.Ordinal))
            select $"{type.Name} takes {parameter.ParameterType.Name}");

    [Fact]
    public void Only_the_sign_in_pages_use_the_sign_in_of_identity() =>
        Assert.Empty(
            from component in Components
            where !component.IsDefined(typeof(ExcludeFromInteractiveRoutingAttribute))
            from property in component.GetProperties(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic)
            where property.IsDefined(typeof(InjectAttribute)) && property.PropertyType == typeof(SignIn)
            select component.Name);

    [Fact]
    public void Entities_are_changed_only_by_their_own_verbs() =>
        Assert.Empty(
            from type in AllTypes
            where type.IsAssignableTo(typeof(IShopRow)) && type.IsClass
            from property in type.GetProperties()
            where property.SetMethod is { IsPublic: true }
            select $"{type.Name}.{property.Name} can be set by anybody");

    [Fact]
    public void Every_key_is_made_by_the_caller() =>
        Assert.Empty(
            from type in AllTypes
            where type.IsAssignableTo(typeof(IShopRow)) && type.IsClass
            where type.GetConstructors().Length > 0 || type.GetMethod("Of", BindingFlags.Public | BindingFlags.Static) is null
            select $"{type.Name} is not made by Of");

    [Fact]
    public void Every_component_has_tests_of_its_own() =>
        Assert.Empty(ComponentNames.Except(Tested).Except(SeenByEveryBrowserTest).Except(StillWithoutTests));

    [Fact]
    public void Who_is_let_off_tests_is_a_component() =>
        Assert.Empty(SeenByEveryBrowserTest.Concat(StillWithoutTests).Except(ComponentNames));
}
