using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace Tickover.Architecture.Tests;

/// <summary>The practice engine is no mirror of the advice it is used to judge.</summary>
public sealed class PracticeTests
{
    private static readonly string[] Known = ["Tickover.Workshop.Balance", "Tickover.Workshop.Balance.Plans", "Tickover.Workshop.Visits"];

    private static readonly string[] Records =
    [
        "BalanceStep", "BalanceRound", "BarrelReading", "RoundRead", "Turned", "RodsTakenOff", "RodsPutBack", "LookedAt", "CheckedFor", "ReadKinds", "Moment",
        "EnginePlan", "PlanBarrel", "PlanCarburettor", "PlanLayout", "Adjuster", "AdjusterKind", "BalanceFault", "FaultPlace",
    ];

    [Fact]
    public void Practice_knows_of_the_house_only_the_plan_and_the_steps()
    {
        using var file = new PEReader(File.OpenRead(House.Practice.Location));
        var reader = file.GetMetadataReader();
        var used = reader.TypeReferences.Select(reader.GetTypeReference)
            .Select(t => (Namespace: reader.GetString(t.Namespace), Name: reader.GetString(t.Name)))
            .Where(t => t.Namespace.StartsWith("Tickover.", StringComparison.Ordinal))
            .ToList();

        Assert.NotEmpty(used);
        Assert.DoesNotContain(used, t => !Known.Contains(t.Namespace, StringComparer.Ordinal) || !Records.Contains(t.Name, StringComparer.Ordinal));
    }

    [Fact]
    public void Practice_draws_no_random_numbers_that_another_machine_would_not_draw()
    {
        using var file = new PEReader(File.OpenRead(House.Practice.Location));
        var reader = file.GetMetadataReader();

        Assert.DoesNotContain(reader.TypeReferences.Select(reader.GetTypeReference), t => reader.GetString(t.Name) is "Random" or "DateTime" or "Stopwatch" or "HashCode");
    }
}
