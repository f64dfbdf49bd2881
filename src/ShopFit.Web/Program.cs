using MudBlazor.Services;
using ShopFit.Web.App;
using ShopFit.Web.Data;
using ShopFit.Web.Features.People;

var builder = WebApplication.CreateBuilder(args);
var folder = ShopFolder.Default;
Directory.CreateDirectory(folder.Path);

builder.Services.AddSingleton(TimeProvider.System);
builder.Services.AddData(folder);
builder.Services.AddPeople();
builder.Services.AddMudServices();
builder.Services.AddLocalization();
builder.Services.AddRazorComponents().AddInteractiveServerComponents();

var app = builder.Build();
await ShopDatabase.PrepareAsync(folder.DatabaseFile, CancellationToken.None);
app.UseAntiforgery();
app.MapStaticAssets();
app.MapRazorComponents<App>().AddInteractiveServerRenderMode();
await app.RunAsync();
