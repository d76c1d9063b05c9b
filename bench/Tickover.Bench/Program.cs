using BenchmarkDotNet.Running;
using Tickover.Bench;
using Tickover.Bench.Balance;
using Tickover.Bench.FaultFinding;
using Tickover.Bench.Fit;
using Tickover.Bench.Gauge;
using Tickover.Bench.Peer;
using Tickover.Bench.Pits;
using Tickover.Bench.Road;
using Tickover.Bench.Shopfloor;
using Tickover.Bench.Supply;
using Tickover.Bench.Tanks;

return args switch
{
    ["peer", var executable, var input] => PeerComparison.Run(executable, input),
    ["survey"] => Survey(),
    ["accuracy"] => AccuracyStudy.Run(),
    ["paper", var samples] => PaperStudy.Run(samples, output: null),
    ["paper", var samples, var output] => PaperStudy.Run(samples, output),
    ["fit"] => FitStudy.Run(),
    ["fit", "serve"] => FitStudy.Serve(),
    ["fit", "ours"] => FitStudy.Ours(),
    ["samplelogs"] => SampleLogs.Write(Path.Combine(Samples.Root, "samples")),
    ["readlog"] => LogSpeed.Run(100),
    ["readlog", var megabytes] => LogSpeed.Run(int.Parse(megabytes, System.Globalization.CultureInfo.InvariantCulture)),
    ["study", .. var words] => StudyCommand.Run(words),
    ["balance-study", .. var words] => BalanceStudy.Run(words),
    ["fault"] => FaultTime.Run(),
    ["fault-study", .. var words] => FaultStudy.Run(words),
    ["balance-plan"] => PlanTime.Run(),
    ["tank"] => TankTime.Run(),
    ["develop", var name] => DevelopCar.Run(name),
    ["wall-study"] => WallStudy.Run(),
    ["supply"] => SupplyTime.Run(),
    ["gauge"] => GaugeSpeed.Run(),
    ["gauge-peer", var executable, var input] => TankPeer.Run(executable, input),
    ["gauge-study"] => GaugeStudy.Run(),
    ["gauge-study", "--drives", var drives, "--seed", var seed] => GaugeStudy.Run(int.Parse(drives, System.Globalization.CultureInfo.InvariantCulture), int.Parse(seed, System.Globalization.CultureInfo.InvariantCulture)),
    ["rules"] => RulesOfThumbStudy.Run(),
    ["shopfloor"] => await ShopfloorStudy.RunAsync(),
    _ => Usage(),
};

static int Survey()
{
    BenchmarkRunner.Run<SurveyBenchmarks>();
    return 0;
}

static int Usage()
{
    Console.Error.WriteLine("Tickover.Bench survey | accuracy | fit [serve|ours] | rules | samplelogs | readlog [MEGABYTES] | study [--cars N] [--seed N] [--habit-only] [--samples] [--keep FILE] | balance-study [--engines N] [--seed N] [--layout a|b|c|d] [--balancer NAME] | balance-plan | fault | fault-study [--cases N] [--seed N] | tank | gauge | gauge-peer EXECUTABLE INPUT | gauge-study [--drives N --seed N] | supply | wall-study | develop SAMPLE | shopfloor | paper SAMPLES [OUTPUT] | peer EXECUTABLE INPUT");
    return 2;
}
