namespace ShopFit.Seed;

/// <summary>What goes into the bag beside the shoes.</summary>
internal static class DemoExtras
{
    private static readonly string[] Colours = ["PINK", "TAN", "BROWN"];

    /// <summary>Codes of the haberdashery, a piece each.</summary>
    internal static IReadOnlyList<string> Of(DemoDancer dancer, string kind, DemoRandom random)
    {
        var colour = dancer.Studio.Colour == "pale pink" ? Colours[0] : random.Pick<string>([(Colours[0], 5), (Colours[1], 2), (Colours[2], 2)]);
        var extras = new List<string>();
        void Perhaps(double chance, string code)
        {
            if (random.Chance(chance))
            {
                extras.Add(code);
            }
        }

        if (kind == "pointe")
        {
            Perhaps(0.75, $"RIB-{colour}");
            Perhaps(0.6, $"ELA-{colour}");
            Perhaps(0.3, $"THR-{colour}");
            Perhaps(0.18, "SEW-PAIR");
        }
        else if (kind is "soft" or "demi-pointe")
        {
            Perhaps(0.35, $"ELA-{colour}");
        }

        return extras;
    }
}
