namespace Tickover.Physics.Walls;

/// <summary>Metals a tank is made of, coated with, or touched by.</summary>
public enum Metal
{
    /// <summary>Iron and low-alloy steel, bare.</summary>
    Steel,

    /// <summary>Steel sheet dipped in lead with a little tin, as most steel tanks are.</summary>
    TerneSteel,

    /// <summary>Steel dipped in zinc.</summary>
    GalvanisedSteel,

    /// <summary>Steel with a coat of tin.</summary>
    TinPlate,

    /// <summary>Steel with a coat of cadmium.</summary>
    CadmiumPlate,

    /// <summary>Aluminium alloys without copper: sheet of the 1000, 3000, 5000 and 6000 series, castings with silicon.</summary>
    Aluminium,

    /// <summary>Aluminium alloys with copper: the 2000 series.</summary>
    AluminiumCopper,

    /// <summary>Stainless steel with 18 % of chromium.</summary>
    Stainless,

    /// <summary>Brass and bronze.</summary>
    Brass,

    /// <summary>Copper.</summary>
    Copper,

    /// <summary>Soft solder of lead and tin.</summary>
    Solder,

    /// <summary>Lead.</summary>
    Lead,

    /// <summary>Chromium plate.</summary>
    Chromium,

    /// <summary>Nickel.</summary>
    Nickel,

    /// <summary>Zinc.</summary>
    Zinc,

    /// <summary>Magnesium.</summary>
    Magnesium,
}
