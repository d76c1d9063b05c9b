namespace Tickover.Workshop.StripDown.Levels;

/// <summary>What a dry height is measured from.</summary>
public enum HeightDatum
{
    /// <summary>The bare face of the lid.</summary>
    Lid = 0,

    /// <summary>The gasket lying on the lid.</summary>
    Gasket = 1,
}
