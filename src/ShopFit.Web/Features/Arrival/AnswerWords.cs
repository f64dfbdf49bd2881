using Microsoft.Extensions.Localization;

namespace ShopFit.Web.Features.Arrival;

/// <summary>Questions and answers of the arrival, as the trade says them.</summary>
internal static class AnswerWords
{
    /// <summary>A finding about the last pair, or what is sore, in a few words.</summary>
    public static string Of(string answer, IStringLocalizer<ArrivalWords> words) => answer switch
    {
        "sank" => words["sank into the box"],
        "knuckled" => words["toes curled"],
        "pressed-big-toe" => words["pressed the big toe"],
        "pinched" => words["pinched at the joints"],
        "loose" => words["loose at the sides"],
        "too-short" => words["too short"],
        "too-long" => words["too long"],
        "heel-slipped" => words["heel slipped off"],
        "heel-bagged" => words["bagged at the heel"],
        "not-up" => words["not up on the platform"],
        "over-box" => words["rolled over the box"],
        "twisted" => words["twisted on the foot"],
        "soft-early" => words["went soft too soon"],
        "nail" => words["nail"],
        "blister" => words["blister"],
        "bunion" => words["bunion"],
        ArrivalQuestions.SoreOtherwise => words["something else"],
        ArrivalQuestions.SkinBroken => words["skin broken"],
        ArrivalQuestions.Nothing => words["nothing, it was good"],
        ArrivalQuestions.Yes => words["Yes"],
        ArrivalQuestions.No => words["No"],
        ArrivalQuestions.NotKnown => words["Not known"],
        _ => answer,
    };

    /// <summary>A question of the guideline, as it is put to the teacher and the family.</summary>
    public static string Asked(ArrivalQuestion question, IStringLocalizer<ArrivalWords> words) => question.Id switch
    {
        "class-twice-a-week" => words["Ballet class twice a week or more?"],
        "fourth-year" => words["In the fourth year of classes, or later?"],
        "in-earnest" => words["Training in earnest, towards pointe?"],
        "point-and-line" => words["Teacher content with the point of the foot and the line of the leg?"],
        "steady" => words["Teacher sees middle and legs hold steady?"],
        _ => words["Teacher sees feet and ankles hold firm?"],
    };

    /// <summary>What an answer "no" to a question of the guideline says, in a few words.</summary>
    public static string Waits(ArrivalQuestion question, IStringLocalizer<ArrivalWords> words) => question.Id switch
    {
        "class-twice-a-week" => words["class less than twice a week"],
        "fourth-year" => words["the fourth year is still to come"],
        "in-earnest" => words["pointe is not what the classes aim at"],
        "point-and-line" => words["the teacher looks at point and line first"],
        "steady" => words["the teacher would build strength first"],
        _ => words["the teacher would firm feet and ankles first"],
    };
}
