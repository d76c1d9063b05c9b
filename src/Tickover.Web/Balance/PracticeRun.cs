using System.Globalization;
using Tickover.Practice;
using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Web.Balance;

/// <summary>A practice engine and what was done to it, played again from the list of acts in the address.</summary>
/// <remarks>The same engine, seed, difficulty and acts give the same readings, so nothing need be kept on the server.</remarks>
public sealed class PracticeRun
{
    /// <summary>The most acts; more than three hours of work.</summary>
    public const int MostActs = 300;

    private const char Between = '.';
    private readonly PracticeEngine _engine;

    private PracticeRun(PracticeEngine engine) => _engine = engine;

    /// <summary>What stands on the engine.</summary>
    public EnginePlan Plan => _engine.Plan;

    /// <summary>What was read and done.</summary>
    public IReadOnlyList<BalanceStep> Steps => _engine.Steps;

    /// <summary>Minutes of work so far.</summary>
    public double Minutes => _engine.Minutes;

    /// <summary>What came of the last act; null where nothing was done yet.</summary>
    public PracticeAnswer? Last { get; private set; }

    /// <summary>The score; null before the end.</summary>
    public PracticeScore? Score => Last?.Score;

    /// <summary>The truth, for the end of the lesson; null before.</summary>
    public PracticeTruth? Truth => Score is null ? null : _engine.Truth();

    /// <summary>Plays acts.</summary>
    /// <param name="plan">The engine.</param>
    /// <param name="seed">Which car of this kind.</param>
    /// <param name="difficulty">0 to 3.</param>
    /// <param name="acts">The acts, such as "r.t:stop:2:1.r1500".</param>
    /// <returns>The run; acts that cannot be read are passed over.</returns>
    public static PracticeRun Play(EnginePlan plan, int seed, int difficulty, string acts)
    {
        ArgumentNullException.ThrowIfNull(acts);
        var run = new PracticeRun(PracticeEngine.Start(plan, seed, difficulty));
        foreach (var act in acts.Split(Between, StringSplitOptions.RemoveEmptyEntries).Take(MostActs))
        {
            run.Last = run.Do(act) ?? run.Last;
        }

        return run;
    }

    /// <summary>The acts with one more.</summary>
    public static string With(string acts, string act) => acts.Length == 0 ? act : $"{acts}{Between}{act}";

    /// <summary>The acts without the last.</summary>
    public static string Without(string acts) => acts.LastIndexOf(Between) is var at && at < 0 ? "" : acts[..at];

    private PracticeAnswer? Do(string act)
    {
        var (word, rest) = act.IndexOf(':', StringComparison.Ordinal) is var at && at > 0 ? (act[..at], act[(at + 1)..]) : (act, "");
        return word switch
        {
            "o" => _engine.RodsOff(),
            "i" => _engine.RodsOn(),
            "x" => _engine.OfferRod(rest),
            "l" => _engine.LookAtStop(rest),
            "t" => Turn(rest),
            "f" => Repair(rest),
            "e" => _engine.Finish(),
            "r" => Whole(rest),
            "b" => Some(rest, ReadKinds.Air),
            "g" => Some(rest, ReadKinds.Lambda),
            _ => null,
        };
    }

    private PracticeAnswer? Turn(string rest)
    {
        var at = rest.LastIndexOf(':');
        return at > 0 && int.TryParse(rest.AsSpan(at + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var steps) && Plan.Find(rest[..at]) is { } adjuster
            ? _engine.Turn(adjuster.Key, (double)steps / adjuster.StepsATurn)
            : null;
    }

    private PracticeAnswer? Repair(string rest)
    {
        return FaultPlace.Read(rest.Replace('_', ' '), Plan) is { } fault ? _engine.Repair(fault) : null;
    }

    private PracticeAnswer Whole(string rest) => _engine.ReadRound(Speed(rest), PracticeEngine.AllKinds);

    // Some barrels only: a round that proves a move.
    private PracticeAnswer? Some(string rest, ReadKinds what)
    {
        var parts = rest.Split('@');
        var held = parts.Length > 1 ? Speed(parts[1]) : null;
        var barrels = parts[0].Split('-').Select(b => int.TryParse(b, NumberStyles.None, CultureInfo.InvariantCulture, out var barrel) ? barrel : 0).ToList();
        return _engine.ReadBarrels(barrels, held, what);
    }

    private static double? Speed(string text) => double.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var rpm) ? rpm : null;
}
