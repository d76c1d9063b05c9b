namespace Tickover.Workshop.StripDown.Levels;

/// <summary>Which side of the float a dry height is measured to, named as fitted.</summary>
public enum HeightEnd
{
    /// <summary>The lowest point: the side away from the lid.</summary>
    Bottom = 0,

    /// <summary>The highest point: the side towards the lid.</summary>
    Top = 1,
}
