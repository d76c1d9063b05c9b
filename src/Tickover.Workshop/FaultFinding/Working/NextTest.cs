using System.Globalization;
using Tickover.Physics.Inference;

namespace Tickover.Workshop.FaultFinding.Working;

/// <summary>Chooses the test that tells most for what it takes.</summary>
internal sealed class NextTest(FaultKnowledge knowledge, FaultCase given, CaseNetwork network, Belief belief)
{
    private const double SettingUp = 12;       // minutes any test takes before it begins; common practice
    private const double APartOff = 8;         // minutes to take off and refit, each step
    private const double AHazard = 4;          // minutes to prepare for a caution
    private const double Worthwhile = 0.03;    // bits; less is not worth asking
    private const double StillPossible = 0.07; // a look-alike below this need not be asked first
    private const double MostGivenUp = 0.15;   // of the best test's bits, that a look-alike's test must have

    private static readonly Telling Asked = new(FaultFinder.WrongWhenSure, 0);

    public FaultNext? Choose()
    {
        var asked = given.Answers.Select(a => a.Test).ToHashSet(StringComparer.Ordinal);
        var worth = knowledge.Tests
            .Where(t => !asked.Contains(t.Key) && network.SpokenOf(t).Any())
            .Select(t => (Test: t, Bits: belief.ExpectedBits(network.Model(t), Asked)))
            .Where(t => t.Bits >= Worthwhile)
            .OrderByDescending(t => t.Bits / Cost(t.Test))
            .ToList();
        if (worth.Count == 0)
        {
            return null;
        }

        var alike = Lookalikes(asked);
        var most = worth.Max(t => t.Bits);
        var first = worth.FirstOrDefault(t => t.Bits >= MostGivenUp * most && network.SpokenOf(t.Test).Any(alike.Contains));
        var chosen = first.Test is null ? worth[0] : first;
        return new FaultNext(chosen.Test, chosen.Bits, Why(chosen.Test, chosen.Bits, first.Test is null ? [] : [.. network.SpokenOf(chosen.Test).Where(alike.Contains)]));
    }

    private static double Cost(FaultTest test) => SettingUp + test.Minutes + APartOff * test.PartsOff + (test.Caution.Length > 0 ? AHazard : 0);

    // Ignition and the engine itself are looked at before the carburettors where they could explain everything that was said.
    private HashSet<int> Lookalikes(HashSet<string> asked)
    {
        var met = knowledge.Tests.Where(t => asked.Contains(t.Key)).SelectMany(network.SpokenOf).ToHashSet();
        return
        [
            .. Enumerable.Range(0, network.Causes.Count).Where(i => network.Causes[i].Kind is FaultKind.Ignition or FaultKind.Engine
                && network.Symptoms.All(s => s.Causes.ContainsKey(network.Causes[i].Key)) && belief.Of(i) >= StillPossible && !met.Contains(i)),
        ];
    }

    private string Why(FaultTest test, double bits, IReadOnlyList<int> alike)
    {
        var share = belief.EntropyBits > 0 ? Math.Min(1, bits / belief.EntropyBits) : 0;
        var takes = string.Create(CultureInfo.InvariantCulture, $"{test.Minutes:0} minutes, {Off(test.PartsOff)}");
        var tells = string.Create(CultureInfo.InvariantCulture, $"It should settle about {share * 100:0} % of what is open, for {takes}.");
        return alike.Count == 0 ? tells : $"{network.Causes[alike[0]].Words}: that could explain it all and is no matter of the carburettors, so it is looked at first. {tells}";
    }

    private static string Off(int parts) => parts switch { 0 => "nothing taken off", 1 => "a part off", _ => "an assembly off" };
}
