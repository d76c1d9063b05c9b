using System.Globalization;
using Tickover.Physics.Inference;
using Tickover.Workshop.Visits.Cautions;

namespace Tickover.Workshop.FaultFinding.Working;

/// <summary>Chooses the test that tells most for what it takes.</summary>
internal sealed class NextTest(FaultKnowledge knowledge, FaultCase given, CaseNetwork network, Belief belief)
{
    private const double SettingUp = 12;       // minutes any test takes before it begins; common practice
    private const double APartOff = 8;         // minutes to take off and refit, each step
    private const double AHazard = 4;          // minutes to prepare for a caution
    private const double InVapour = 8;         // the same where the tablet has to stay outside the vapour zone
    private const double Worthwhile = 0.03;    // bits; less is not worth asking
    private const double StillPossible = 0.07; // a look-alike below this need not be asked first
    private const double MostGivenUp = 0.15;   // of the best test's bits, that a look-alike's test must have
    private const double MuchMore = 1.3;       // a test left aside that tells this much more is spoken of

    private static readonly Telling Asked = new(FaultFinder.WrongWhenSure, 0);

    public FaultNext? Choose()
    {
        var asked = given.Answers.Select(a => a.Test).ToHashSet(StringComparer.Ordinal);
        var covered = given.Answers.Where(a => a.Certainty != FaultCertainty.Unsure).SelectMany(a => knowledge.Test(a.Test)?.Covers ?? []).ToHashSet(StringComparer.Ordinal);
        var worth = knowledge.Tests
            .Where(t => !asked.Contains(t.Key) && !covered.Contains(t.Key) && network.SpokenOf(t).Any())
            .Select(t => (Test: t, Bits: belief.ExpectedBits(network.Model(t), Asked)))
            .Where(t => t.Bits >= Worthwhile)
            .OrderByDescending(t => t.Bits / Cost(t.Test))
            .ToList();
        if (worth.Count == 0)
        {
            return null;
        }

        var alike = Lookalikes(asked);
        var most = worth.MaxBy(t => t.Bits);
        var first = worth.FirstOrDefault(t => t.Bits >= MostGivenUp * most.Bits && network.SpokenOf(t.Test).Any(alike.Contains));
        var (test, bits) = first.Test is null ? worth[0] : first;
        var why = string.Join(' ', new[] { AlikeFirst(test, first.Test is null ? [] : alike), Tells(test), Takes(test, bits), Fuller(test, bits, most) }.Where(w => w.Length > 0));
        return new FaultNext(test, bits, Share(bits), why);
    }

    private static double Cost(FaultTest test) => SettingUp + test.Minutes + APartOff * test.PartsOff + Hazard(test);

    private static double Hazard(FaultTest test) => CautionCatalogue.Find(test.Caution) switch { null => 0, { Tablet: TabletPlace.OutsideZone } => InVapour, _ => AHazard };

    // Ignition and the engine itself are looked at before the carburettors where they could explain everything that was said.
    private HashSet<int> Lookalikes(HashSet<string> asked)
    {
        var met = knowledge.Tests.Where(t => asked.Contains(t.Key)).SelectMany(network.SpokenOf).ToHashSet();
        return
        [
            .. Enumerable.Range(0, network.Causes.Count).Where(i => network.Causes[i].Kind is FaultKind.Ignition or FaultKind.Engine
                && network.Stated.All(s => s.Causes.ContainsKey(network.Causes[i].Key)) && belief.Of(i) >= StillPossible && !met.Contains(i)),
        ];
    }

    private string AlikeFirst(FaultTest test, HashSet<int> alike)
    {
        var spoken = network.SpokenOf(test).Where(alike.Contains).OrderByDescending(belief.Of).ToList();
        return spoken.Count == 0 ? string.Empty : $"{network.Causes[spoken[0]].Words}: that could explain it all and is no matter of the fuel system, so it is looked at first.";
    }

    private string Tells(FaultTest test)
    {
        var model = network.Model(test);
        var spoken = network.SpokenOf(test).OrderByDescending(belief.Of).ToList();
        var likely = Likeliest(model, spoken[0]);
        var other = spoken.Skip(1).Where(i => Likeliest(model, i) != likely).Take(1).ToList();
        return other.Count == 0 ? $"It looks for: {network.Causes[spoken[0]].Words}." : $"It tells \"{network.Causes[spoken[0]].Words}\" from \"{network.Causes[other[0]].Words}\".";
    }

    private static int Likeliest(OutcomeModel model, int cause) => Enumerable.Range(0, model.Outcomes).MaxBy(o => model.Probability(o, [cause]));

    private string Takes(FaultTest test, double bits) =>
        string.Create(CultureInfo.InvariantCulture, $"It should settle about {Share(bits) * 100:0} % of what is open, for {test.Minutes:0} minutes, {Off(test.PartsOff)}.");

    private string Fuller(FaultTest test, double bits, (FaultTest Test, double Bits) most) =>
        !ReferenceEquals(most.Test, test) && most.Bits > MuchMore * bits && Cost(most.Test) > Cost(test)
            ? string.Create(CultureInfo.InvariantCulture, $"One that tells more ({Share(most.Bits) * 100:0} %) takes {most.Test.Minutes:0} minutes, {Off(most.Test.PartsOff)}{(Hazard(most.Test) > Hazard(test) ? " and has the greater hazard" : "")}; it is kept for later.")
            : string.Empty;

    private double Share(double bits) => belief.EntropyBits > 0 ? Math.Min(1, bits / belief.EntropyBits) : 0;

    private static string Off(int parts) => parts switch { 0 => "nothing taken off", 1 => "a part off", _ => "an assembly off" };
}
