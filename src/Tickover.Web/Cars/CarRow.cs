using Tickover.Workshop.Cars;

namespace Tickover.Web.Cars;

/// <summary>A car on the first page.</summary>
/// <param name="Shelved">Its document.</param>
/// <param name="Heading">Its name, or its file's where it cannot be read.</param>
/// <param name="Layout">Layout, cylinders and barrels in words.</param>
/// <param name="Verdict">What the mixture map says, one sentence.</param>
/// <param name="Which">Which barrels the sentence is about; empty where it is all of them.</param>
public sealed record CarRow(ShelvedCar Shelved, string Heading, string Layout, string Verdict, string Which);
