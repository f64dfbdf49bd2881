using System.Globalization;
using ShopFit.Web.Features.Dancers;
using ShopFit.Web.Features.Settings;

namespace ShopFit.Web.Features.Papers;

/// <summary>The language that a paper speaks.</summary>
internal static class PaperLanguage
{
    private const string English = "en";

    /// <summary>Writes facts in the dancer's language as far as the shop speaks it.</summary>
    public static TFacts In<TFacts>(Dancer? dancer, Shop shop, Func<CultureInfo, TFacts> write)
    {
        var (culture, uiCulture) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        var language = Of(dancer, shop);
        try
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (language, language);
            return write(language);
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (culture, uiCulture);
        }
    }

    /// <summary>English without a country is written as the shop's paper suggests: days before months on A4, months before days on Letter.</summary>
    private static CultureInfo Of(Dancer? dancer, Shop shop)
    {
        var language = dancer?.Language ?? English;
        try
        {
            return CultureInfo.GetCultureInfo(language != English ? language : shop.Paper == "Letter" ? "en-US" : "en-GB", predefinedOnly: true);
        }
        catch (CultureNotFoundException)
        {
            return CultureInfo.GetCultureInfo(English);
        }
    }
}
