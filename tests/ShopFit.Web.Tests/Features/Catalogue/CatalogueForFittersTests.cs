using Bunit;
using Microsoft.Extensions.DependencyInjection;
using ShopFit.Web.Support;

namespace ShopFit.Web.Features.Catalogue;

public sealed class CatalogueForFittersTests : PageTest
{
    public override async ValueTask InitializeAsync()
    {
        await base.InitializeAsync();
        Services.AddLocalization().AddCatalogue();
        await CatalogueShop.ImportAsync(Shop);
    }

    [Fact]
    public async Task Fitters_read_models_and_sizes_and_change_nothing()
    {
        await new MeasureSample(Shop.Writes, Shop.Clock).RunAsync(
            Shop.Manager,
            Guid.CreateVersion7(),
            new MeasureSampleRequest(await CatalogueShop.IdOfAsync(Shop, "W38"), [236, null, null, null, null, null, null, null], new DateOnly(2026, 3, 14), "Ines"),
            TestContext.Current.CancellationToken);
        var (modelId, sizeId) = (await CatalogueShop.ModelOfAsync(Shop, "W38"), await CatalogueShop.IdOfAsync(Shop, "W38"));

        var model = Render<ModelPage>(page => page.Add(shown => shown.ModelId, modelId));
        var size = Render<SizePage>(page => page.Add(shown => shown.SizeId, sizeId));
        model.WaitForElement("tbody");
        size.WaitForElement("tbody");

        Assert.Empty(model.FindAll("button, input, .main"));
        Assert.Empty(size.FindAll("button, input, .main"));
    }

    [Fact]
    public async Task Fitters_read_what_labels_mean_and_change_nothing()
    {
        var maker = await CatalogueShop.MakerAsync(Shop, "Aldergate");

        var page = Render<LabelsPage>(labels => labels.Add(shown => shown.MakerId, maker));
        page.WaitForElement("h2");

        Assert.All(page.FindAll("button, input, select"), part => Assert.True(part.HasAttribute("disabled")));
        Assert.Empty(page.FindAll(".keep"));
    }
}
