using Tickover.Workshop.StripDown.Cards;
using Tickover.Workshop.Visits;

namespace Tickover.Web.StripDown;

/// <summary>How a set is spoken of on the page.</summary>
internal static class SetWords
{
    /// <summary>What the set is called at a stage.</summary>
    public static string Heading(Stage stage) => stage == Stage.Build ? "The set as left" : "The set as found";

    /// <summary>What a card is called at a stage.</summary>
    public static string Card(Stage stage) => stage == Stage.Build ? "Card as left" : "Card as found";

    /// <summary>The verdict of a row, in a word beside its mark.</summary>
    public static string Of(SetStanding standing) => standing switch
    {
        SetStanding.Alike => "alike",
        SetStanding.Differs => "differs",
        SetStanding.CannotBeTold => "cannot be told",
        SetStanding.NotNoted => "not noted",
        _ => "",
    };

    /// <summary>The mark of a row: a shape, never a colour alone.</summary>
    public static string Mark(SetStanding standing) => standing switch
    {
        SetStanding.Alike => "○",
        SetStanding.Differs => "◆",
        SetStanding.CannotBeTold => "◇",
        _ => "",
    };
}
