using Bunit;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Features.Settings;
using ShopFit.Web.Shared;

namespace ShopFit.Web.Features.People;

public sealed class StaffPageTests : ManagerPageTest
{
    public override async ValueTask InitializeAsync()
    {
        await base.InitializeAsync();
        Services.AddSingleton<IPasswordHasher<Person>, PasswordHasher<Person>>().AddSingleton<ILookupNormalizer, UpperInvariantLookupNormalizer>();
        Services.AddScoped<NewPerson>().AddScoped<AddPerson>().AddScoped<RenamePerson>().AddScoped<ResetPassword>().AddScoped<SwitchSignIn>()
            .AddScoped<AddApiKey>().AddScoped<RevokeApiKey>().AddScoped<RestoreApiKey>().AddScoped<StaffQueries>();
        await using var db = Shop.CreateDbContext();
        var manager = await db.Roles.Where(role => role.Name == Roles.Manager).Select(role => role.Id).SingleAsync(Stop);
        db.UserRoles.Add(new IdentityUserRole<Guid> { UserId = Shop.Manager.PersonId, RoleId = manager });
        await db.SaveChangesAsync(Stop);
    }

    [Fact]
    public void The_only_manager_cannot_be_shut_out_and_the_page_says_why()
    {
        var page = Open();

        page.FindAll("button").First(key => key.TextContent.Contains(": Ines", StringComparison.Ordinal) && key.TextContent.Contains("Shut out", StringComparison.Ordinal)).Click();

        page.WaitForAssertion(() => Assert.StartsWith("Ines is the only manager who can sign in.", page.Find(".problem").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Somebody_is_shut_out_by_a_tap_and_let_in_again_by_undoing_it()
    {
        var page = Open();

        page.FindAll("button").First(key => key.TextContent.Contains("Shut out: Bram", StringComparison.Ordinal)).Click();
        page.WaitForAssertion(() => Assert.Contains("May not sign in since", page.Markup, StringComparison.Ordinal));

        await page.InvokeAsync(() => Services.GetRequiredService<UndoOffer>().TakeAsync());
        page.WaitForAssertion(() => Assert.DoesNotContain("May not sign in since", page.Markup, StringComparison.Ordinal));
    }

    [Fact]
    public void Somebody_new_stands_in_the_list_and_what_is_wrong_keeps_what_was_typed()
    {
        var page = Open();
        page.Find("form.new input").Input("Wren");
        Field(page, "Name to sign in with").Input("BRAM");
        Field(page, "First password").Input("short");
        page.Find("form.new").Submit();
        page.WaitForAssertion(() => Assert.Equal(2, page.FindAll(".problem").Count));
        Assert.Equal("BRAM", Field(page, "Name to sign in with").GetAttribute("value"));

        Field(page, "Name to sign in with").Input("wren");
        Field(page, "First password").Input("felt and pine boards");
        page.Find("form.new").Submit();

        page.WaitForAssertion(() => Assert.Contains("Wren can sign in as wren now.", page.Markup, StringComparison.Ordinal));
        Assert.DoesNotContain("felt and pine", page.Markup, StringComparison.Ordinal);
        Assert.Contains(page.FindAll(".rows b"), name => name.TextContent == "Wren");
    }

    [Fact]
    public async Task A_key_is_shown_once_and_revoked_by_a_tap_that_can_be_undone()
    {
        var page = Open();
        Field(page, "Name of the program").Input("till");
        page.FindAll("form.new")[1].Submit();
        page.WaitForAssertion(() => Assert.Equal(43, page.Find(".key-text").TextContent.Length));
        var key = page.Find(".key-text").TextContent;

        Key(page, "I have copied it").Click();
        Assert.DoesNotContain(key, page.Markup, StringComparison.Ordinal);

        page.WaitForAssertion(() => Key(page, "Revoke").Click());
        page.WaitForAssertion(() => Assert.Contains("No program has a key.", page.Markup, StringComparison.Ordinal));
        await using (var db = Shop.CreateDbContext())
        {
            Assert.NotNull((await db.ApiKeys.SingleAsync(Stop)).RevokedAt);
        }

        await page.InvokeAsync(Services.GetRequiredService<UndoOffer>().TakeAsync);
        page.WaitForAssertion(() => Assert.DoesNotContain("No program has a key.", page.Markup, StringComparison.Ordinal));
        await using (var db = Shop.CreateDbContext())
        {
            Assert.Null((await db.ApiKeys.SingleAsync(Stop)).RevokedAt);
        }
    }

    [Fact]
    public void A_new_password_is_set_and_leaves_the_page()
    {
        var page = Open();
        page.FindAll("button").First(key => key.TextContent.Contains("Names and password: Bram", StringComparison.Ordinal)).Click();
        Field(page, "New password").Input("short");
        page.FindAll(".panel form")[1].Submit();
        page.WaitForAssertion(() => Assert.StartsWith("Password: 12 to 200 characters.", page.Find(".problem").TextContent, StringComparison.Ordinal));

        Field(page, "New password").Input("felt and pine boards");
        page.FindAll(".panel form")[1].Submit();

        page.WaitForAssertion(() => Assert.Contains("Bram has a new password.", page.Markup, StringComparison.Ordinal));
        Assert.Empty(page.FindAll(".panel"));
    }

    private IRenderedComponent<StaffPage> Open()
    {
        var page = Render<StaffPage>();
        page.WaitForElement("form.new");
        return page;
    }
}
