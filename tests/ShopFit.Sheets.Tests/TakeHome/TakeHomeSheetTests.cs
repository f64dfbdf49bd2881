using System.Text.Json;
using System.Text.Json.Nodes;

namespace ShopFit.Sheets.TakeHome;

public class TakeHomeSheetTests
{
    [Fact]
    public void A_stored_sheet_comes_back_as_it_was()
    {
        var stored = JsonSerializer.Serialize(Sample.Sheet());

        var again = JsonSerializer.Deserialize<TakeHomeSheet>(stored)!;

        Assert.Equal(stored, JsonSerializer.Serialize(again));
        Assert.Equal(Sample.Sheet() with { Pads = again.Pads, Criteria = again.Criteria }, again);
        Assert.Equal(Sample.Sheet().Pads, again.Pads);
        Assert.Equal(Sample.Sheet().Criteria, again.Criteria);
    }

    [Fact]
    public void A_stored_sheet_says_its_format_and_spells_its_choices()
    {
        var stored = JsonNode.Parse(JsonSerializer.Serialize(Sample.Sheet(PaperSize.Letter)))!;

        Assert.Equal(1, (int)stored["FormatVersion"]!);
        Assert.Equal("Letter", (string)stored["Paper"]!);
        Assert.Equal("Left", (string)stored["Pads"]![0]!["Foot"]!);
        Assert.Equal("2026-11-25", (string)stored["Date"]!);
    }
}
