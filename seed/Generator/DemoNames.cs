namespace ShopFit.Seed;

/// <summary>Names for people who do not exist: given names from everywhere, family names put together from plants, places and sounds.</summary>
internal static class DemoNames
{
    /// <summary>So that a label, a list and a sheet have met a name that is longer than they would like.</summary>
    internal const string TheLongest = "Wilhelmina Anastasia Persephone Featherstonewick van der Brambleholt-Quennerdale";

    /// <summary>One in so many families has a name of two parts.</summary>
    private const int OneInDouble = 5;

    internal static IReadOnlyList<string> Girls { get; } =
    [
        "Aoife", "Anaïs", "Agnieszka", "Amara", "Ayla", "Beatriz", "Blythe", "Bronwen", "Calla", "Chiamaka", "Clémence", "Cosima", "Dagny", "Delphine", "Dunja", "Efua",
        "Eirlys", "Elowen", "Esme", "Farida", "Fenella", "Freya", "Gaia", "Ginevra", "Greta", "Hana", "Hermia", "Ines", "Ingrid", "Isolde", "Jorun", "Kavya",
        "Keziah", "Leocadia", "Linnéa", "Lowri", "Maeve", "Mahsa", "Malin", "Marisol", "Meera", "Minh-Anh", "Nadège", "Naoko", "Nerys", "Noor", "Nyasha", "Odette",
        "Orla", "Paloma", "Petra", "Queenie", "Ramona", "Renske", "Roísín", "Romilly", "Saoirse", "Seren", "Shirin", "Siân", "Solveig", "Sorcha", "Suvi", "Tamsin",
        "Thandiwe", "Tova", "Ululani", "Uzma", "Valentina", "Verity", "Wanjiru", "Winifred", "Xanthe", "Yara", "Yumi", "Zofia", "Zoë", "Zuleika",
    ];

    internal static IReadOnlyList<string> Boys { get; } =
    [
        "Aurelio", "Bastien", "Cormac", "Dilwyn", "Emeka", "Faolán", "Gethin", "Hamish", "Ilir", "Jory", "Kofi", "Lorcan", "Mattéo", "Nikolaj", "Osian", "Piran",
        "Quentin", "Rohan", "Søren", "Tadeusz", "Ulises", "Vikram", "Wulfric", "Yannis", "Zoltán",
    ];

    internal static IReadOnlyList<string> Grown { get; } =
    [
        "Abiola", "Agathe", "Alasdair", "Bettina", "Brendan", "Carys", "Cristóbal", "Dervla", "Désirée", "Edda", "Eluned", "Farouk", "Gwendolen", "Hanneke", "Hester", "Ivo",
        "Jocasta", "Kirsten", "Leopold", "Lucjan", "Marguerite", "Mehmet", "Morag", "Nadia", "Nkechi", "Olwen", "Ottoline", "Pádraig", "Rosalba", "Ruaridh", "Sabine", "Sanjiv",
        "Sybil", "Tomasz", "Ursula", "Vaughan", "Wilfrida", "Xiomara", "Yusuf", "Zdenka",
    ];

    private static readonly string[] Beginnings =
    [
        "Alder", "Apple", "Barley", "Birch", "Bracken", "Clover", "Cuckoo", "Elder", "Fallow", "Fennel", "Gorse", "Hazel", "Heron", "Holly", "Juniper", "Lark",
        "Linnet", "Marsh", "Meadow", "Medlar", "Nettle", "Oaken", "Orchard", "Pippin", "Quince", "Rowan", "Sallow", "Sorrel", "Tansy", "Thistle", "Wether", "Yarrow",
    ];

    private static readonly string[] Endings =
    [
        "bourne", "combe", "croft", "dale", "fold", "garth", "hallow", "hurst", "ley", "mere", "pool", "quoin", "ridge", "shaw", "stead", "thwaite", "wick", "worth",
    ];

    // Sounds of many tongues, put together by hand; where one of them is somebody's, it is by chance.
    private static readonly string[] Sounds =
    [
        "Adewarre", "Anjouvelle", "Arrizabel", "Bãlcescot", "Chandramere", "Çelikyurda", "D’Alençourt", "da Ribamoura", "de l’Écluse", "Dąbrowisko", "Eze-Marlow", "Fitzmorrow",
        "Gwynfaelog", "Hōjimura", "Ibekwara", "Jaśminek", "Kaurindale", "Kvitneset", "Lindegård", "MacGillavry", "Mbazira", "Nakagawara", "Nguyên-Thu", "Ó Sceachán", "O’Brambly",
        "Okonjara", "Ørnhavn", "Papadrakis", "Quispelara", "Rathnavel", "Ríoghbhard", "Sandoval-Teo", "Szőlőhegy", "Tamizhar", "Tūmatarau", "Vásárhelyfi", "von Ulmenau", "Wachirani",
        "Yıldızoba", "Žitnik-Bor",
    ];

    /// <summary>A family name.</summary>
    internal static string Family(DemoRandom random)
    {
        var name = random.Chance(0.45) ? random.Pick(Sounds) : Composed(random);
        return random.Below(OneInDouble) == 0 && !name.Contains('-', StringComparison.Ordinal) ? $"{name}-{Composed(random)}" : name;
    }

    private static string Composed(DemoRandom random) => random.Pick(Beginnings) + random.Pick(Endings);
}
