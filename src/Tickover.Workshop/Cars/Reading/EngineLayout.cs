namespace Tickover.Workshop.Cars.Reading;

/// <summary>How the cylinders stand and fire.</summary>
/// <param name="Layout">In words.</param>
/// <param name="Cylinders">Their number; 0 where it is faulty.</param>
/// <param name="Banks">Bank of each, from 1.</param>
/// <param name="FiringOrder">Numbers in order of firing.</param>
/// <param name="FiringDegrees">Crank angle of firing by number of cylinder, degrees.</param>
internal sealed record EngineLayout(
    string Layout, int Cylinders, IReadOnlyList<int> Banks, IReadOnlyList<int> FiringOrder, IReadOnlyList<double> FiringDegrees);
