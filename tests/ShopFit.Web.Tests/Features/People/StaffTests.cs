using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.People;

public sealed class StaffTests : IAsyncLifetime
{
    private const string Password = "felt and pine boards";

    private TestSite _site = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private TestShop Shop => _site.Shop;

    public async ValueTask InitializeAsync() => _site = await TestSite.OpenAsync();

    public ValueTask DisposeAsync() => _site.DisposeAsync();

    [Fact]
    public async Task Somebody_new_signs_in_with_the_name_and_password_they_were_given()
    {
        var added = Assert.IsType<AddPersonOutcome.Added>(await AddAsync("Wren", "Wren Ashby", Roles.Fitter));

        Assert.Equal("/", await SignInAsync("wren", Password));
        var person = Assert.Single((await SeeAsync()).People, person => person.Id == added.PersonId);
        Assert.Equal(("Wren", "Wren Ashby", false, null), (person.UserName, person.DisplayName, person.IsManager, person.SignInOffAt));
    }

    [Fact]
    public async Task A_name_that_is_taken_is_refused_however_it_is_written() =>
        Assert.Equal([PersonProblem.UserNameTaken], Assert.IsType<AddPersonOutcome.Invalid>(await AddAsync(" FITTER ", "Another", Roles.Fitter)).Problems);

    [Fact]
    public async Task Everything_that_is_wrong_is_told_at_once()
    {
        var outcome = await Do<AddPerson>().RunAsync(Shop.Manager, Guid.CreateVersion7(), " ", "tab\tbed", "short", "owner", Stop);

        Assert.Equal(
            [PersonProblem.UserNameNotAllowed, PersonProblem.DisplayNameNotAllowed, PersonProblem.PasswordNotAllowed, PersonProblem.RoleNotKnown],
            Assert.IsType<AddPersonOutcome.Invalid>(outcome).Problems);
    }

    [Fact]
    public async Task A_new_password_shuts_out_the_old_one_and_whoever_signed_in_with_it()
    {
        var id = await IdOfAsync("fitter");
        var stamp = (await PersonAsync(id)).SecurityStamp;

        Assert.IsType<ResetPasswordOutcome.Done>(await Do<ResetPassword>().RunAsync(Shop.Manager, Guid.CreateVersion7(), id, Password, Stop));

        Assert.Null(await SignInAsync("fitter", TestSite.Password));
        Assert.Equal("/", await SignInAsync("fitter", Password));
        Assert.NotEqual(stamp, (await PersonAsync(id)).SecurityStamp);
        Assert.IsType<ResetPasswordOutcome.PasswordNotAllowed>(await Do<ResetPassword>().RunAsync(Shop.Manager, Guid.CreateVersion7(), id, "short", Stop));
    }

    [Fact]
    public async Task A_new_password_lets_in_again_who_typed_too_many_wrong_ones()
    {
        for (int i = 0; i < 6; i++)
        {
            await SignInAsync("fitter", "not that one at all");
        }

        Assert.Null(await SignInAsync("fitter", TestSite.Password));
        await Do<ResetPassword>().RunAsync(Shop.Manager, Guid.CreateVersion7(), await IdOfAsync("fitter"), Password, Stop);

        Assert.Equal("/", await SignInAsync("fitter", Password));
    }

    [Fact]
    public async Task Whoever_is_shut_out_cannot_sign_in_until_let_in_again()
    {
        var id = await IdOfAsync("fitter");
        var stamp = (await PersonAsync(id)).SecurityStamp;

        Assert.IsType<SwitchSignInOutcome.Done>(await SwitchAsync(id, on: false));
        Assert.Null(await SignInAsync("fitter", TestSite.Password));
        Assert.NotEqual(stamp, (await PersonAsync(id)).SecurityStamp);
        Assert.Equal(Shop.Clock.GetUtcNow(), Assert.Single((await SeeAsync()).People, person => person.Id == id).SignInOffAt);

        Assert.IsType<SwitchSignInOutcome.Done>(await SwitchAsync(id, on: true));
        Assert.Equal("/", await SignInAsync("fitter", TestSite.Password));
    }

    [Fact]
    public async Task The_last_manager_cannot_be_shut_out()
    {
        var id = await IdOfAsync("manager");
        Assert.IsType<SwitchSignInOutcome.LastManager>(await SwitchAsync(id, on: false));

        var second = Assert.IsType<AddPersonOutcome.Added>(await AddAsync("second", "Second", Roles.Manager)).PersonId;
        Assert.IsType<SwitchSignInOutcome.Done>(await SwitchAsync(id, on: false));
        Assert.IsType<SwitchSignInOutcome.LastManager>(await SwitchAsync(second, on: false));
    }

    [Fact]
    public async Task Two_managers_who_shut_each_other_out_at_once_leave_one()
    {
        var first = await IdOfAsync("manager");
        var second = Assert.IsType<AddPersonOutcome.Added>(await AddAsync("second", "Second", Roles.Manager)).PersonId;

        var outcomes = await Task.WhenAll(Task.Run(() => SwitchAsync(first, on: false)), Task.Run(() => SwitchAsync(second, on: false)));

        Assert.Single(outcomes.OfType<SwitchSignInOutcome.Done>());
        Assert.Single(outcomes.OfType<SwitchSignInOutcome.LastManager>());
    }

    [Fact]
    public async Task A_new_name_is_signed_in_with_and_the_old_one_is_free()
    {
        var id = await IdOfAsync("fitter");

        Assert.IsType<RenamePersonOutcome.Renamed>(await Do<RenamePerson>().RunAsync(Shop.Manager, Guid.CreateVersion7(), id, "Orla", "Orla M.", Stop));

        Assert.Equal("/", await SignInAsync("orla", TestSite.Password));
        Assert.IsType<AddPersonOutcome.Added>(await AddAsync("fitter", "New", Roles.Fitter));
        Assert.Equal(
            [PersonProblem.UserNameTaken],
            Assert.IsType<RenamePersonOutcome.Invalid>(await Do<RenamePerson>().RunAsync(Shop.Manager, Guid.CreateVersion7(), id, "manager", "Orla", Stop)).Problems);
    }

    [Fact]
    public async Task A_revoked_key_opens_nothing_and_its_name_is_free()
    {
        var keyId = Guid.CreateVersion7();
        await Do<AddApiKey>().RunAsync(Shop.Manager, keyId, "till", Stop);
        Assert.Equal("till", Assert.Single((await SeeAsync()).Keys).Name);

        Assert.IsType<RevokeApiKeyOutcome.Revoked>(await Do<RevokeApiKey>().RunAsync(Shop.Manager, Guid.CreateVersion7(), keyId, Stop));

        Assert.Empty((await SeeAsync()).Keys);
        await using var db = Shop.CreateDbContext();
        Assert.NotNull((await db.ApiKeys.SingleAsync(Stop)).RevokedAt);
        Assert.IsType<AddApiKeyOutcome.Added>(await Do<AddApiKey>().RunAsync(Shop.Manager, Guid.CreateVersion7(), "till", Stop));
    }

    [Fact]
    public async Task Each_step_is_kept_with_who_took_it_and_no_password_with_it()
    {
        var id = await IdOfAsync("fitter");
        await Do<RenamePerson>().RunAsync(Shop.Manager, Guid.CreateVersion7(), id, "fitter", "Orla", Stop);
        await Do<ResetPassword>().RunAsync(Shop.Manager, Guid.CreateVersion7(), id, Password, Stop);
        await SwitchAsync(id, on: false);

        await using var db = Shop.CreateDbContext();
        var rows = await db.SettingChanges.OrderBy(row => row.Id).ToListAsync(Stop);
        Assert.Equal([$"people.{id}.name", $"people.{id}.password", $"people.{id}.sign-in"], rows.Select(row => row.Path));
        Assert.All(rows, row => Assert.Equal(Shop.Manager.PersonId, row.PersonId));
        Assert.Equal([("fitter by name", "Orla"), (null, null), ("yes", "no")], rows.Select(row => (row.Before, row.After)));
        Assert.DoesNotContain(await db.Commands.Select(command => command.OutcomeJson).ToListAsync(Stop), text => text.Contains("felt", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Nobody_of_another_shop_can_be_touched()
    {
        var stranger = Shop.Manager with { ShopId = Guid.CreateVersion7() };
        var id = await IdOfAsync("fitter");

        Assert.IsType<SwitchSignInOutcome.NotHere>(await Do<SwitchSignIn>().RunAsync(stranger, Guid.CreateVersion7(), id, on: false, Stop));
        Assert.IsType<ResetPasswordOutcome.NotHere>(await Do<ResetPassword>().RunAsync(stranger, Guid.CreateVersion7(), id, Password, Stop));
        Assert.IsType<RenamePersonOutcome.NotHere>(await Do<RenamePerson>().RunAsync(stranger, Guid.CreateVersion7(), id, "a", "b", Stop));
    }

    [Fact]
    public async Task A_fitter_may_do_none_of_it()
    {
        var id = await IdOfAsync("fitter");
        await Assert.ThrowsAsync<NotPermittedException>(() => Do<SwitchSignIn>().RunAsync(Shop.Fitter, Guid.CreateVersion7(), id, on: false, Stop));
        await Assert.ThrowsAsync<NotPermittedException>(() => Do<ResetPassword>().RunAsync(Shop.Fitter, Guid.CreateVersion7(), id, Password, Stop));
        await Assert.ThrowsAsync<NotPermittedException>(() => Do<AddPerson>().RunAsync(Shop.Fitter, Guid.CreateVersion7(), "x", "x", Password, Roles.Manager, Stop));
        await Assert.ThrowsAsync<NotPermittedException>(() => Do<RevokeApiKey>().RunAsync(Shop.Fitter, Guid.CreateVersion7(), id, Stop));
    }

    private TAction Do<TAction>()
        where TAction : notnull => _site.Services.CreateScope().ServiceProvider.GetRequiredService<TAction>();

    private Task<AddPersonOutcome> AddAsync(string userName, string displayName, string role) =>
        Do<AddPerson>().RunAsync(Shop.Manager, Guid.CreateVersion7(), userName, displayName, Password, role, Stop);

    private Task<SwitchSignInOutcome> SwitchAsync(Guid id, bool on) => Do<SwitchSignIn>().RunAsync(Shop.Manager, Guid.CreateVersion7(), id, on, Stop);

    private Task<SeenStaff> SeeAsync() => new StaffQueries(Shop.ReadsOf(Shop.Manager)).SeeAsync(Stop);

    private async Task<Guid> IdOfAsync(string userName)
    {
        await using var db = Shop.CreateDbContext();
        return await db.Users.Where(person => person.UserName == userName).Select(person => person.Id).SingleAsync(Stop);
    }

    private async Task<Person> PersonAsync(Guid id)
    {
        await using var db = Shop.CreateDbContext();
        return await db.Users.AsNoTracking().SingleAsync(person => person.Id == id, Stop);
    }

    // Where signing in leads; null where the page is shown again.
    private async Task<string?> SignInAsync(string userName, string password)
    {
        using var browser = _site.NewBrowser();
        using var answer = await TestSite.SendFormAsync(browser, "/sign-in", ("Form.UserName", userName), ("Form.Password", password));
        return answer.Headers.Location is { } location ? new Uri(browser.BaseAddress!, location).AbsolutePath : null;
    }
}
