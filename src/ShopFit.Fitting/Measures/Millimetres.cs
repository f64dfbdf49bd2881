using System.Globalization;

namespace ShopFit.Fitting.Measures;

/// <summary>A length on a foot or inside a shoe, in millimetres.</summary>
/// <remarks>
/// The only unit of length in the library: inches, centimetres and shop sizes are converted where they
/// enter. Two equal readings are equal values; the results of arithmetic are not rounded, so compare
/// those with a tolerance. May be negative, as ease can be. The default value is zero.
/// </remarks>
public readonly record struct Millimetres : IComparable<Millimetres>
{
    /// <summary>Millimetres in an inch, exactly, since the international yard and pound agreement of 1959.</summary>
    public const double PerInch = 25.4;

    private Millimetres(double value) => Value = value;

    /// <summary>No length at all.</summary>
    public static Millimetres Zero => default;

    /// <summary>The bare number of millimetres.</summary>
    public double Value { get; }

    /// <summary>The bare number of inches.</summary>
    public double Inches => Value / PerInch;

    /// <summary>A length of so many millimetres.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is not finite.</exception>
    public static Millimetres From(double value) =>
        double.IsFinite(value)
            ? new(value)
            : throw new ArgumentOutOfRangeException(nameof(value), value, "A length must be a finite number.");

    /// <summary>A length of so many centimetres.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="centimetres"/> is not finite.</exception>
    public static Millimetres FromCentimetres(double centimetres) => From(centimetres * 10);

    /// <summary>A length of so many inches.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="inches"/> is not finite.</exception>
    public static Millimetres FromInches(double inches) => From(inches * PerInch);

    /// <inheritdoc/>
    public int CompareTo(Millimetres other) => Value.CompareTo(other.Value);

    /// <summary>The length to a tenth of a millimetre with its unit, for logs and messages.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Value:0.#} mm");

    /// <summary>The sum of two lengths.</summary>
    public static Millimetres operator +(Millimetres left, Millimetres right) => From(left.Value + right.Value);

    /// <summary>The difference of two lengths.</summary>
    public static Millimetres operator -(Millimetres left, Millimetres right) => From(left.Value - right.Value);

    /// <summary>How many times <paramref name="right"/> goes into <paramref name="left"/>: a plain number.</summary>
    public static double operator /(Millimetres left, Millimetres right) => left.Value / right.Value;

    /// <summary>Whether the left length is shorter.</summary>
    public static bool operator <(Millimetres left, Millimetres right) => left.Value < right.Value;

    /// <summary>Whether the left length is longer.</summary>
    public static bool operator >(Millimetres left, Millimetres right) => left.Value > right.Value;

    /// <summary>Whether the left length is not longer.</summary>
    public static bool operator <=(Millimetres left, Millimetres right) => left.Value <= right.Value;

    /// <summary>Whether the left length is not shorter.</summary>
    public static bool operator >=(Millimetres left, Millimetres right) => left.Value >= right.Value;
}
