using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;

namespace ShopFit.Fitting.Defaults;

/// <summary>A hash of a tree of records: names and values of all properties in one fixed text, SHA-256 of it.</summary>
internal static class Fingerprints
{
    public static string Of(object value)
    {
        var text = new StringBuilder();
        Write(text, value);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())));
    }

    private static void Write(StringBuilder text, object? value)
    {
        switch (value)
        {
            case null:
                text.Append('-');
                break;
            case string or bool or Enum:
                text.Append('"').Append(value).Append('"');
                break;
            case IFormattable number when value.GetType().IsPrimitive:
                text.Append(number.ToString(null, CultureInfo.InvariantCulture));
                break;
            case IReadOnlyDictionary<string, double> map:
                foreach (var (key, entry) in map.OrderBy(pair => pair.Key, StringComparer.Ordinal))
                {
                    text.Append(key).Append('=');
                    Write(text, entry);
                    text.Append(';');
                }

                break;
            case IEnumerable list:
                text.Append('[');
                foreach (object? item in list)
                {
                    Write(text, item);
                    text.Append(',');
                }

                text.Append(']');
                break;
            default:
                text.Append('{');
                foreach (var property in value.GetType()
                    .GetProperties(BindingFlags.Instance | BindingFlags.Public)
                    .OrderBy(property => property.Name, StringComparer.Ordinal))
                {
                    text.Append(property.Name).Append(':');
                    Write(text, property.GetValue(value));
                    text.Append(';');
                }

                text.Append('}');
                break;
        }
    }
}
