using Tickover.Workshop.Cars;

namespace Tickover.Web.Cars;

/// <summary>Says where a figure comes from.</summary>
internal static class OriginWords
{
    public static string Of(Origin origin) => origin.Kind switch
    {
        OriginKind.Given => "from the car's document",
        OriginKind.CommonPractice => $"Common practice: {origin.Note}",
        OriginKind.Computed => $"Computed: {origin.Note}",
        _ => $"Assumed: {origin.Note}",
    };

    /// <summary>The origin in a word or two, for a table.</summary>
    public static string Short(Origin origin) => origin.Kind switch
    {
        OriginKind.Given => "car's document",
        OriginKind.CommonPractice => "common practice",
        OriginKind.Computed => "computed",
        _ => "assumed",
    };
}
