using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Toolchains.InProcess.NoEmit;
using BenchmarkDotNet.Configs;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Bench;

/// <summary>Whole maps of 24 speeds by 16 openings, and a jet on trial, as the product runs them.</summary>
[Config(typeof(InProcess))]
public class SurveyBenchmarks
{
    private Car _alike = null!;
    private Car _different = null!;
    private Car _shared = null!;
    private Car _six = null!;
    private MixtureSurvey _fitted = null!;
    private Car _otherJet = null!;

    [GlobalSetup]
    public void Read()
    {
        _alike = Samples.Read("osprey-v8");
        _shared = Samples.Read("gannet-1500");
        _six = Samples.Read("tern-2800");

        // another choke in each barrel: neither air nor fuel can be shared between any two
        _different = Samples.Change(_alike, [.. Enumerable.Range(1, 8).Select(n => (
            FormattableString.Invariant($"carburettors[{(n - 1) / 2}].barrels[{(n - 1) % 2}].choke"),
            FormattableString.Invariant($"{35 + 0.2 * n:F1} mm")))]);
        _fitted = MixtureSurvey.Run(_alike);
        _otherJet = Samples.Change(_alike, ("barrel.mainJet", "160"));
    }

    [Benchmark(Baseline = true)]
    public MixtureSurvey EightBarrelsAlike() => MixtureSurvey.Run(_alike);

    [Benchmark]
    public MixtureSurvey EightBarrelsDifferent() => MixtureSurvey.Run(_different);

    [Benchmark]
    public MixtureSurvey SharedManifold() => MixtureSurvey.Run(_shared);

    [Benchmark]
    public MixtureSurvey SixBarrelsAlike() => MixtureSurvey.Run(_six);

    [Benchmark]
    public MixtureSurvey JetOnTrial() => _fitted.Trial(_otherJet);

    private sealed class InProcess : ManualConfig
    {
        public InProcess() => AddJob(Job.Default
            .WithToolchain(InProcessNoEmitToolchain.Instance).WithWarmupCount(5).WithIterationCount(11).WithInvocationCount(1).WithUnrollFactor(1));
    }
}
