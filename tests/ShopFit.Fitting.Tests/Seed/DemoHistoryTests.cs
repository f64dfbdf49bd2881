using ShopFit.Seed;

namespace ShopFit.Fitting.Seed;

public class DemoHistoryTests
{
    [Fact]
    public void The_generator_writes_the_two_years_again_byte_for_byte()
    {
        var people = DemoPeople.Invent();
        var diary = DemoDiary.Write(people, DemoCatalogue.Sizes(), DemoGoods.Read(SeedFiles.Text("haberdashery.csv")));

        Assert.Equal(SeedFiles.Text("studios.csv"), DemoTables.Studios());
        Assert.Equal(SeedFiles.Text("guardians.csv"), DemoTables.Guardians(people));
        Assert.Equal(SeedFiles.Text("dancers.csv"), DemoTables.Dancers(people, diary.Fittings));
        Assert.Equal(SeedFiles.Text("fittings.csv"), DemoTables.Fittings(diary.Fittings));
        Assert.Equal(SeedFiles.Text("readings.csv"), DemoTables.Readings(diary.Fittings));
        Assert.Equal(SeedFiles.Text("try-ons.csv"), DemoTables.TryOns(diary.Fittings));
        Assert.Equal(SeedFiles.Text("deliveries.csv"), DemoTables.Deliveries(diary.Deliveries));
    }
}
