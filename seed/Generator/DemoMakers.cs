namespace ShopFit.Seed;

/// <summary>The five makers of the demo shop. All of them, their models, words and prices are invented.</summary>
internal static class DemoMakers
{
    private static readonly DemoChoice NoChoice = new("", 0, 1);

    /// <summary>All five, in the order of the catalogue.</summary>
    internal static IReadOnlyList<DemoMaker> All { get; } = [ThistlefenLastworks(), DunnockAndVale(), PellworthBench(), OstrinRow(), CasterwynDanceWorks()];

    /// <summary>British sizes; three widths named after what grows on a heath, four shanks named after trees.</summary>
    private static DemoMaker ThistlefenLastworks() => new(
        "Thistlefen Lastworks",
        "TL",
        "20",
        "uk-adult",
        LeadTimeDays: 28,
        Widths: [new("Fern", -1, 2), new("Moss", 0, 5), new("Bracken", 1, 3)],
        Vamps: [NoChoice],
        Shanks: [new("Willow", 3.8, 4), new("Ash", 5.2, 5), new("Elm", 6.6, 3), new("Oak", 8, 1)],
        Models:
        [
            new("Moorlace", "MOO", "pointe", "paste")
            {
                From = 2,
                To = 9,
                PriceMinor = 5_950,
                Wanted = 3,
                Places = [(2, "B1"), (4, "B2"), (5.5, "B3"), (7, "B4")],
                Sample = new("measured", 5.5, 4, 7, Length: 237.5, BallGirth: 212, Vamp: 63.5, BoxBreadth: 75.5, HeelBreadth: 62, CrownDepth: 36.5, ToeSlope: 20),
            },
            new("Sedgewing", "SED", "pointe", "paste")
            {
                From = 2,
                To = 9,
                BoxStep = -1,
                PriceMinor = 6_150,
                Wanted = 1.5,
                Places = [(2, "A1"), (4.5, "A2"), (6.5, "A3")],
            },
            new("Hollinby", "HOL", "demi-pointe", "paste")
            {
                From = 1.5,
                To = 9,
                PriceMinor = 3_900,
                Shanks = [NoChoice],
                Places = [(1.5, "A4"), (5, "A5")],
            },
            new("Nettlecote", "NET", "character", "soft")
            {
                CameLater = true,
                From = 1,
                To = 9,
                PriceMinor = 4_250,
                UsualFoot = 225,
                FootDeviation = 22,
                Widths = [new("Moss", 0, 3), new("Bracken", 1, 2)],
                Shanks = [NoChoice],
                Places = [(1, "H1"), (5, "H2")],
            },
        ]);

    /// <summary>Paris points; four widths by bars, three vamps by lines; the shank goes with the model.</summary>
    private static DemoMaker DunnockAndVale() => new(
        "Dunnock & Vale Makers",
        "DV",
        "21",
        "eu",
        LeadTimeDays: 42,
        Widths: [new("one-bar", -1, 2), new("two-bar", 0, 5), new("three-bar", 1, 3), new("four-bar", 2, 1)],
        Vamps: [new("low line", -1, 2), new("mid line", 0, 5), new("high line", 1, 2)],
        Shanks: [],
        Models:
        [
            new("Quillmere", "QUI", "pointe", "paste")
            {
                From = 33.5,
                To = 42.5,
                BoxStep = 1,
                PriceMinor = 6_400,
                Wanted = 2,
                Shanks = [new("firm", 6.4, 1)],
                Places = [(33.5, "B5"), (38, "B6")],
                Sample = new("maker", 37, 33.5, 42.5, Length: 240, BallGirth: 214, Vamp: 64, BoxBreadth: 78, HeelBreadth: 61.5, CrownDepth: 37, ToeSlope: 12),
            },
            new("Ambersall", "AMB", "pointe", "moulded")
            {
                From = 33.5,
                To = 42.5,
                PriceMinor = 7_900,
                Shanks = [new("springy", 4.6, 1)],
                Places = [(33.5, "C1"), (37, "C2"), (40, "C3")],
            },
            new("Clatterford", "CLA", "tap", "soft")
            {
                CameLater = true,
                From = 28,
                To = 45,
                PriceMinor = 4_600,
                UsualFoot = 222,
                FootDeviation = 26,
                Widths = [new("two-bar", 0, 3), new("three-bar", 1, 2)],
                Vamps = [NoChoice],
                Shanks = [NoChoice],
                Places = [(28, "H3"), (36, "H4")],
            },
        ]);

    /// <summary>The foot in millimetres; two widths, five shanks in plain words.</summary>
    private static DemoMaker PellworthBench() => new(
        "Pellworth Bench",
        "PB",
        "22",
        "mondopoint",
        LeadTimeDays: 21,
        Widths: [new("plain", 0, 3), new("ample", 1, 2)],
        Vamps: [NoChoice],
        Shanks: [new("yielding", 3, 2), new("easy", 4.2, 3), new("middling", 5.4, 4), new("steady", 6.6, 2), new("stout", 8.2, 1)],
        Models:
        [
            new("Harrowfen", "HAR", "pointe", "paste")
            {
                From = 200,
                To = 275,
                PriceMinor = 5_400,
                Wanted = 2,
                Places = [(200, "D2"), (230, "D1"), (245, "D3")],
                Sample = new("measured", 235, 225, 250, Length: 234.5, BallGirth: 211, Vamp: 62.5, BoxBreadth: 74.5, HeelBreadth: 61.5, CrownDepth: 36, ToeSlope: 17),
            },
            new("Winterbeck", "WIN", "pointe", "paste")
            {
                From = 200,
                To = 275,
                BoxStep = 1,
                PriceMinor = 5_600,
                Places = [(200, "D4"), (235, "D5")],
            },
            new("Larkmoor", "LAR", "soft", "soft")
            {
                From = 200,
                To = 275,
                PriceMinor = 2_150,
                Wanted = 0.6,
                UsualFoot = 220,
                FootDeviation = 24,
                Shanks = [NoChoice],
                Places = [(200, "F1"), (240, "F2")],
            },
            new("Rushlight", "RUS", "soft", "soft")
            {
                CameLater = true,
                From = 165,
                To = 305,
                PriceMinor = 1_950,
                Wanted = 1.6,
                UsualFoot = 222,
                FootDeviation = 30,
                Widths = [new("slight", -1, 1), new("plain", 0, 3), new("ample", 1, 3), new("roomy", 2, 2)],
                Shanks = [NoChoice],
                Places = [(165, "F5"), (210, "F6"), (250, "F7")],
            },
        ]);

    /// <summary>The foot in centimetres; five widths by grain, four shanks by bells; the vamp goes with the model.</summary>
    private static DemoMaker OstrinRow() => new(
        "Ostrin Row",
        "OR",
        "23",
        "jp",
        LeadTimeDays: 56,
        Widths: [new("rye", -2, 1), new("oat", -1, 2), new("barley", 0, 4), new("wheat", 1, 3), new("maize", 2, 1)],
        Vamps: [NoChoice],
        Shanks: [new("first bell", 3.4, 2), new("second bell", 5, 4), new("third bell", 6.4, 3), new("fourth bell", 7.8, 1)],
        Models:
        [
            new("Velloway", "VEL", "pointe", "moulded")
            {
                From = 20.5,
                To = 27.5,
                BoxStep = -1,
                PriceMinor = 7_200,
                Wanted = 0.8,
                Places = [(20.5, "C4"), (23.5, "C5")],
            },
            new("Marrowby", "MAR", "pointe", "paste")
            {
                From = 20.5,
                To = 27.5,
                PriceMinor = 6_300,
                Wanted = 0.8,
                Places = [(20.5, "D6"), (23.5, "D7")],
            },
            new("Fallowstep", "FAL", "jazz", "soft")
            {
                CameLater = true,
                From = 18,
                To = 30,
                PriceMinor = 3_350,
                UsualFoot = 232,
                FootDeviation = 26,
                Widths = [new("oat", -1, 1), new("barley", 0, 3), new("wheat", 1, 2)],
                Shanks = [NoChoice],
                Places = [(18, "H5"), (24, "H6")],
            },
        ]);

    /// <summary>The sliding gauge's own scale; three vamps by running water, four shanks by cloth; one width a model.</summary>
    private static DemoMaker CasterwynDanceWorks() => new(
        "Casterwyn Dance Works",
        "CW",
        "24",
        "us-women",
        LeadTimeDays: 14,
        Widths: [NoChoice],
        Vamps: [new("brook", -1, 2), new("beck", 0, 5), new("tarn", 1, 2)],
        Shanks: [new("linen", 3.6, 3), new("twill", 5, 5), new("canvas", 6.3, 3), new("sailcloth", 7.6, 1)],
        Models:
        [
            new("Fenwhistle", "FEN", "pointe", "paste")
            {
                From = 3.5,
                To = 12,
                PriceMinor = 5_700,
                Wanted = 2.5,
                Places = [(3.5, "E1"), (6.5, "E2"), (9, "E3")],
                Sample = new("maker", 8, 3.5, 12, Length: 235.5, BallGirth: 211.5, Vamp: 63),
            },
            new("Oakrill", "OAK", "pointe", "paste")
            {
                From = 3.5,
                To = 12,
                BoxStep = -1,
                PriceMinor = 5_800,
                Places = [(3.5, "E4"), (8, "E5")],
            },
            new("Saddlecombe", "SAD", "pointe", "moulded")
            {
                From = 3.5,
                To = 12,
                BoxStep = 1,
                PriceMinor = 7_500,
                Places = [(3.5, "E6"), (8, "E7")],
                Sample = new("maker", 8, 3.5, 12, Length: 236, BallGirth: 212, Vamp: 63, BoxBreadth: 77, CrownDepth: 37, ToeSlope: 12),
            },
            new("Brindlewick", "BRI", "demi-pointe", "paste")
            {
                From = 3.5,
                To = 12,
                PriceMinor = 3_700,
                Vamps = [new("brook", -1, 1), new("beck", 0, 2)],
                Shanks = [NoChoice],
                Places = [(3.5, "F3"), (8, "F4")],
            },
            new("Quickbeam", "QUB", "jazz", "soft")
            {
                CameLater = true,
                From = 3.5,
                To = 13,
                PriceMinor = 3_600,
                UsualFoot = 240,
                FootDeviation = 18,
                Vamps = [NoChoice],
                Shanks = [NoChoice],
                Places = [(3.5, "H7")],
            },
            new("Copperlane", "COP", "character", "soft")
            {
                CameLater = true,
                From = 3.5,
                To = 13,
                PriceMinor = 4_450,
                UsualFoot = 238,
                FootDeviation = 16,
                Vamps = [NoChoice],
                Shanks = [NoChoice],
                Places = [(3.5, "H8")],
            },
            new("Pebblewick", "PEB", "tap", "soft")
            {
                CameLater = true,
                From = 3.5,
                To = 13,
                PriceMinor = 4_900,
                UsualFoot = 242,
                FootDeviation = 18,
                Vamps = [NoChoice],
                Shanks = [NoChoice],
                Places = [(3.5, "H9")],
            },
        ]);
}
