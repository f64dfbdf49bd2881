using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Features.Catalogue;
using ShopFit.Web.Features.People;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Settings;

/// <summary>Renders pages of the shop for a manager called Ines.</summary>
public abstract class ManagerPageTest : PageTest
{
    protected static CancellationToken Stop => TestContext.Current.CancellationToken;

    protected override Actor? SignedIn => Shop.Manager;

    /// <summary>Another manager, at another laptop.</summary>
    protected Actor Other { get; private set; } = null!;

    public override async ValueTask InitializeAsync()
    {
        await base.InitializeAsync();
        Services.AddLocalization();
        Services.AddSettings().AddCatalogue();
        await HasPersonAsync(Shop.Manager.PersonId, "Ines");
        Other = Shop.Manager with { PersonId = Guid.CreateVersion7(), Name = "Bram" };
        await HasPersonAsync(Other.PersonId, "Bram");
    }

    protected static IElement Field<TPage>(IRenderedComponent<TPage> page, string label)
        where TPage : IComponent =>
        page.Find($"#{page.FindAll("label").Single(each => each.TextContent.Trim().StartsWith(label, StringComparison.Ordinal)).GetAttribute("for")}");

    protected static IElement Key<TPage>(IRenderedComponent<TPage> page, string words)
        where TPage : IComponent =>
        page.FindAll("button").First(key => key.TextContent.Trim().StartsWith(words, StringComparison.Ordinal));

    private Task<Person> HasPersonAsync(Guid id, string name)
    {
        var person = Person.Of(id, Shop.ShopId, name, name);
        person.Rename(name, name, name.ToUpperInvariant());
        return Shop.HasAsync(person);
    }
}
