namespace Tickover.Web.Mixture;

/// <summary>For which screens the pictures are drawn.</summary>
public enum Screen
{
    /// <summary>Both, and the style sheet chooses: a whole page, whose server does not know the screen.</summary>
    Any,

    /// <summary>A tablet or a desk.</summary>
    Wide,

    /// <summary>A phone.</summary>
    Narrow,
}
