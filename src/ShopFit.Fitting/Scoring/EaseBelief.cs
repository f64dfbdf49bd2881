using ShopFit.Fitting.Beliefs;
using ShopFit.Fitting.Shoes;

namespace ShopFit.Fitting.Scoring;

/// <summary>What the joint belief says of the needs of both feet and of the shoes tried: all that eases are made of.</summary>
/// <remarks>
/// First the need of each criterion, left foot then right; then the eight numbers of each maker, model and pair tried. An ease is
/// form − need + Σ SD · number over the three levels of the shoe.
/// </remarks>
internal sealed class EaseBelief
{
    private readonly Dictionary<ShoeKey, int> _places;
    private readonly LearntPrior _learnt;

    private EaseBelief(EaseModel model, Gaussian all, Dictionary<ShoeKey, int> places, LearntPrior learnt)
    {
        Model = model;
        All = all;
        _places = places;
        _learnt = learnt;
    }

    public EaseModel Model { get; }

    public Gaussian All { get; }

    /// <summary>Where the eight numbers of a maker, model or pair start; −1 where it was not tried.</summary>
    public int PlaceOf(ShoeKey key) => _places.Count > 0 && _places.TryGetValue(key, out int place) ? place : -1;

    /// <summary>What is known of the numbers of a shoe's maker and model from earlier fittings.</summary>
    public LearntModel LearntOf(ShoeOnFile shoe) => _learnt.Of(shoe);

    public static EaseBelief Of(EaseModel model, JointBelief joint)
    {
        int needs = 2 * model.Count;
        int shoes = joint.All.Size - JointBelief.FeetSize;
        int size = needs + shoes;
        int full = joint.All.Size;

        double[] mean = new double[size];
        double[] covariance = new double[size * size];
        double[] direction = new double[full];
        double[] projected = new double[full];
        for (int row = 0; row < size; row++)
        {
            Direction(direction, model, row);
            Kernel.Project(joint.All.Covariance, direction, projected);
            mean[row] = Vectors.Dot(direction, joint.All.Mean);
            if (row < needs)
            {
                mean[row] += model.Rows[row % model.Count].NeedConstant;
            }

            for (int column = 0; column <= row; column++)
            {
                Direction(direction, model, column);
                covariance[(row * size) + column] = covariance[(column * size) + row] = Vectors.Dot(direction, projected);
            }
        }

        var places = new Dictionary<ShoeKey, int>();
        foreach (var tried in joint.Tried)
        {
            places[tried] = needs + (ShoeForm.Parts * places.Count);
        }

        return new EaseBelief(model, new Gaussian(mean, covariance), places, new LearntPrior(joint.Learnt));
    }

    /// <summary>The same, with another mean and covariance of the same numbers.</summary>
    public EaseBelief With(Gaussian all) => new(Model, all, _places, _learnt);

    private static void Direction(Span<double> direction, EaseModel model, int row)
    {
        direction.Clear();
        if (row < 2 * model.Count)
        {
            EaseModel.AddNeed(direction, model.Rows[row % model.Count], (Feet.Side)(row / model.Count), 1);
        }
        else
        {
            direction[JointBelief.FeetSize + row - (2 * model.Count)] = 1;
        }
    }
}
