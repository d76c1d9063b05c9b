namespace Tickover.Workshop.Visits;

/// <summary>What a reading is taken of.</summary>
public enum PlaceKind
{
    /// <summary>The car as a whole.</summary>
    Car,

    /// <summary>A tank, named by its side or number.</summary>
    Tank,

    /// <summary>A bank of cylinders.</summary>
    Bank,

    /// <summary>A carburettor, counted from the front.</summary>
    Carburettor,

    /// <summary>A barrel, by the car document's number.</summary>
    Barrel,

    /// <summary>A cylinder, by the maker's number.</summary>
    Cylinder,

    /// <summary>A run of pipe or hose, named by where it runs.</summary>
    Run,
}
