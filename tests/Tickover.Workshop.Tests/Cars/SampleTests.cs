using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Tests.Cars;

public class SampleTests
{
    public static TheoryData<string> Sound => ["tern-2800", "osprey-v8", "gannet-1500"];

    [Theory]
    [MemberData(nameof(Sound))]
    public void A_sample_is_read_without_fault_or_warning(string name)
    {
        var reading = CarDocument.Read(Repository.Sample(name));

        Assert.Empty(reading.Faults);
        Assert.Empty(reading.Warnings);
        Assert.NotNull(reading.Car);
    }

    [Theory]
    [MemberData(nameof(Sound))]
    public void A_useful_document_has_some_twenty_to_thirty_lines(string name)
    {
        var lines = Repository.Sample(name).TrimEnd().Split('\n');

        Assert.InRange(lines.Length, 18, 32);
        Assert.All(lines, l => Assert.InRange(l.Length, 1, 130));
    }

    [Fact]
    public void The_faulty_sample_shows_every_fault_at_once()
    {
        var reading = CarDocument.Read(Repository.Sample("faulty"));

        Assert.Null(reading.Car);
        var report = string.Join('\n', reading.Faults.Select(f => $"{f.Path}: {f.Problem} | {f.Allowed} | {f.WhatToDo}"));
        TestContext.Current.SendDiagnosticMessage(report);
        Assert.True(reading.Faults.Count >= 14, report);
    }
}
