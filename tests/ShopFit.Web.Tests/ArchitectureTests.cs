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

    private static readonly Type[] AllTypes = typeof(ShopDbContext).Assembly.GetTypes();

    private static IEnumerable<Type> Components => AllTypes.Where(type => type.IsAssignableTo(typeof(IComponent)));

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
}
