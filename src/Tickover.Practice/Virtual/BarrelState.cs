namespace Tickover.Practice.Virtual;

/// <summary>What is true of one barrel at one moment.</summary>
/// <param name="Air">Air in by its mouth, kg/h.</param>
/// <param name="Unmetered">Air in below the plate and by the spindle, kg/h.</param>
/// <param name="Vacuum">Mean depression behind the plate, kPa.</param>
/// <param name="Lambda">Lambda of what it feeds.</param>
/// <param name="Work">Work of what it feeds, in air well burnt per cycle over swept volume.</param>
internal readonly record struct BarrelState(double Air, double Unmetered, double Vacuum, double Lambda, double Work);
