using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Defaults;
using ShopFit.Fitting.Feet;
using ShopFit.Fitting.Measures;
using ShopFit.Fitting.Scoring;
using ShopFit.Fitting.Shoes;
using ShopFit.Fitting.TryOns;

namespace ShopFit.Benchmarks.TryOns;

/// <summary>The rule of the size chart: the gauge's size and a half, the chart's width, then a half up or down by what was seen.</summary>
internal sealed class ChartFitter(SimulatedShop shop, FeetBelief read, FitDefaults defaults, Random random)
{
    private const double HalfSize = 0.5;

    private readonly HashSet<string> _tried = new(StringComparer.Ordinal);
    private readonly ShoeOnFile[] _shelf = Chance.Shuffled(shop.Shoes.Where(shoe => shoe.OnShelf), random);
    private double _halves = HalfSize;
    private double _width = WidthOf(read, defaults);

    /// <summary>The next pair: of the sizes nearest to what the chart says now, one that was not tried.</summary>
    public ShoeOnFile Next()
    {
        double length = Math.Max(read.Mean(Side.Left, Trait.Length), read.Mean(Side.Right, Trait.Length));
        var next = _shelf.Where(shoe => !_tried.Contains(shoe.Sku)).MinBy(shoe =>
        {
            var label = shop.Labels[shoe.Sku];
            double size = label.System.SizeOfFoot(Millimetres.From(length)) + (_halves * SizeStep(label.System));
            return Math.Round(Math.Abs(label.Size - size) / (SizeStep(label.System) * HalfSize)) + Math.Abs(label.WidthStep - _width);
        })!;
        _tried.Add(next.Sku);
        return next;
    }

    /// <summary>A half up where the toes are crumpled, a half down where heel or length are loose, otherwise a step of width.</summary>
    public void Saw(IReadOnlyList<CheckAnswer> answers)
    {
        bool Says(string check, int answer) => answers.Any(given => given.Check == check && given.Answer == answer);
        if (Says("toes-flat", 0))
        {
            _halves += HalfSize;
        }
        else if (Says("toes-flat", 2) || Says("heel-fabric", 2))
        {
            _halves -= HalfSize;
        }
        else if (Says("ball-sides", 0) || Says("toe-hold", 0))
        {
            _width = Math.Min(1, _width + 1);
        }
        else if (Says("ball-sides", 2) || Says("toe-hold", 2))
        {
            _width = Math.Max(-1, _width - 1);
        }
    }

    // A whole size of a system that labels in halves or whole points, in its own unit.
    private static double SizeStep(SizeSystem system) => system.Id is "mondopoint" or "jp" ? 2 * system.LabelStep : system.Id == "eu" ? system.LabelStep : 1;

    private static double WidthOf(FeetBelief read, FitDefaults defaults)
    {
        var girth = defaults.Label.Parts.Single(part => part.Part == FormPart.BallGirth);
        double wanted = (read.Mean(Side.Left, Trait.BallGirth) + read.Mean(Side.Right, Trait.BallGirth)) / 2;
        double length = (read.Mean(Side.Left, Trait.Length) + read.Mean(Side.Right, Trait.Length)) / 2;

        // The chart is made for the middle of what is sold: a dancer of middle girth takes the standard width.
        double middle = 85.44 + (girth.PerLength * length);
        return Math.Clamp(Math.Round((wanted - middle) / girth.PerWidthStep), -1, 1);
    }
}
