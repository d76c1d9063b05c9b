using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace Tickover.Architecture.Tests;

/// <summary>The physics touches no disk, clock, chance, culture or console: what its compiled code refers to says so.</summary>
public sealed class PhysicsPurityTests
{
    private static readonly string[] ForbiddenTypes =
        ["System.Console", "System.Random", "System.TimeProvider", "System.Diagnostics.Stopwatch"];

    private static readonly string[] ForbiddenNamespaces = ["System.IO", "System.Net", "System.Diagnostics.Process"];

    private static readonly string[] ForbiddenMembers =
        ["System.DateTime.get_Now", "System.DateTime.get_UtcNow", "System.DateTimeOffset.get_Now", "System.DateTimeOffset.get_UtcNow", "System.Guid.NewGuid",
         "System.Globalization.CultureInfo.get_CurrentCulture", "System.Globalization.CultureInfo.get_CurrentUICulture"];

    // The compiler asks for the number of the thread in every method that yields; nothing else of the environment may be asked.
    private const string Environment = "System.Environment.";
    private const string OfIterators = Environment + "get_CurrentManagedThreadId";

    [Fact]
    public void Physics_refers_to_no_disk_clock_chance_culture_or_console()
    {
        using var file = new PEReader(File.OpenRead(House.Physics.Location));
        var metadata = file.GetMetadataReader();

        var types = metadata.TypeReferences.Select(metadata.GetTypeReference).ToArray();
        var names = types.Select(t => Name(metadata, t)).ToHashSet(StringComparer.Ordinal);
        var members = metadata.MemberReferences.Select(metadata.GetMemberReference)
            .Where(m => m.Parent.Kind == HandleKind.TypeReference)
            .Select(m => $"{Name(metadata, metadata.GetTypeReference((TypeReferenceHandle)m.Parent))}.{metadata.GetString(m.Name)}").ToArray();

        Assert.Contains("System.Math", names);
        Assert.Empty(names.Intersect(ForbiddenTypes, StringComparer.Ordinal));
        Assert.DoesNotContain(names, n => ForbiddenNamespaces.Any(f => n.StartsWith(f + ".", StringComparison.Ordinal)));
        Assert.DoesNotContain(members, m => m.StartsWith(Environment, StringComparison.Ordinal) && !string.Equals(m, OfIterators, StringComparison.Ordinal));
        Assert.Empty(members.Intersect(ForbiddenMembers, StringComparer.Ordinal));
    }

    private static string Name(MetadataReader metadata, TypeReference type) =>
        $"{metadata.GetString(type.Namespace)}.{metadata.GetString(type.Name)}";
}
