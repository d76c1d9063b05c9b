using Tickover.Architecture.Tests;

namespace Tickover.Cli.Tests;

/// <summary>The sample documents, by their paths from the root of the clone.</summary>
internal static class Samples
{
    public const string Tern = "samples/tern-2800.car.json";
    public const string Osprey = "samples/osprey-v8.car.json";
    public const string Faulty = "samples/faulty.car.json";

    public static TheoryData<string> Good => [.. Repository.Under("samples", ".car.json").Where(f => f is not Faulty)];
}
