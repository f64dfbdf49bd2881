namespace ShopFit.Fitting.Feet;

/// <summary>What is known of a foot, standing with weight on it. The order is the order inside a belief.</summary>
public enum Trait
{
    /// <summary>Heel to the tip of the longest toe, mm.</summary>
    Length = 0,

    /// <summary>Heel to the joint of the big toe, mm.</summary>
    HeelToBall = 1,

    /// <summary>Straight across the joints, mm.</summary>
    BallBreadth = 2,

    /// <summary>Tape round the joints, mm.</summary>
    BallGirth = 3,

    /// <summary>Across the toes at the nail bases, mm.</summary>
    ToeBreadth = 4,

    /// <summary>Widest part of the heel, mm.</summary>
    HeelBreadth = 5,

    /// <summary>Height at the joints, mm.</summary>
    ForefootDepth = 6,

    /// <summary>From the longest toe tip back to the fourth toe tip, along the foot, mm.</summary>
    ToeSlope = 7,

    /// <summary>Second toe tip ahead of the big toe tip, mm; negative when behind.</summary>
    SecondToeLead = 8,

    /// <summary>How much the girth drops when the forefoot is gathered by hand, mm.</summary>
    Squeeze = 9,

    /// <summary>Ankle and instep, pointed, degrees.</summary>
    PointRange = 10,

    /// <summary>Foot and ankle strength, 0 to 10 points.</summary>
    Strength = 11,
}
