using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Tests.Balance.Advising;

/// <summary>Idle mixture once the air is alike: each screw by λ of its cylinder or by speed, all of a bank by the gas of the bank. The engines here are written in the tests and share nothing with the advice.</summary>
public sealed class IdleMixtureTests
{
    private const int MostSteps = 400;

    private static readonly BalanceStep[] Alike = [Books.Idle(Books.All(Books.TwoBanks, 4)), Books.Held(1500, Books.All(Books.TwoBanks, 9)), Books.Held(2500, Books.All(Books.TwoBanks, 15))];

    [Fact]
    public void By_lambda_of_each_cylinder_every_screw_ends_within_the_band_and_is_turned_as_little_as_it_needs()
    {
        var lambda = Enumerable.Range(1, 8).ToDictionary(b => b, b => 0.92 + (0.02 * (b - 4.5)));
        var (steps, next) = Follow(ReadKinds.Lambda, Books.TwoBanks, read => Lambda(read.Barrels[0], lambda[read.Barrels[0]]),
            (screw, turns) => lambda[screw.Barrels[0]] += -0.16 * turns);

        Assert.Equal(NextKind.Done, next.Kind);
        Assert.All(lambda.Values, l => Assert.InRange(l, 0.88, 0.96));
        Assert.Equal(["1", "2", "3", "6", "7", "8"], steps.OfType<Turned>().Select(t => t.Adjuster.Split(':')[1]).Distinct(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    [Fact]
    public void A_screw_that_changes_nothing_of_its_lambda_is_said_and_left()
    {
        var (steps, next, remarks) = FollowWithRemarks(ReadKinds.Lambda, Books.TwoBanks, read => Lambda(read.Barrels[0], read.Barrels[0] == 3 ? 1.05 : 0.92), (_, _) => { });

        Assert.Equal(NextKind.Done, next.Kind);
        Assert.Contains(remarks, r => r.Contains("whatever it is turned. Idle is fed from elsewhere", StringComparison.Ordinal));
        Assert.InRange(steps.OfType<Turned>().Count(), 2, 3);
        Assert.All(steps.OfType<Turned>(), t => Assert.Equal("mixture:3", t.Adjuster));
    }

    [Fact]
    public void By_speed_a_screw_ends_an_eighth_to_the_lean_of_the_fastest_place()
    {
        // The trade's 25 rpm a quarter turn either side of the best (reference 2.9), a reading every time.
        var position = Enumerable.Range(1, 8).ToDictionary(b => b, _ => 0.0);
        var best = Enumerable.Range(1, 8).ToDictionary(b => b, b => 0.1 * (b - 4));
        double Speed() => 900 - position.Sum(p => 400 * (p.Value - best[p.Key]) * (p.Value - best[p.Key]));

        var (_, next) = Follow(ReadKinds.Speed, Books.TwoBanks, read => Rpm(read.Barrels[0], Speed()), (screw, turns) => position[screw.Barrels[0]] += turns);

        Assert.Equal(NextKind.Done, next.Kind);
        Assert.All(position, p => Assert.InRange(p.Value - best[p.Key] + 0.125, -0.13, 0.13));
    }

    [Fact]
    public void By_the_gas_of_a_bank_all_its_screws_go_alike_and_the_other_bank_is_left()
    {
        var position = Enumerable.Range(1, 8).ToDictionary(b => b, _ => 0.0);
        var found = new Dictionary<int, double> { [1] = 0.84, [2] = 0.93 };
        static int Bank(NextMove read) => read.Who is "Bank 2" or "Right bank" ? 2 : 1;
        double Gas(int bank) => found[bank] - (0.12 * position.Where(p => (p.Key > 4) == (bank == 2)).Average(p => p.Value));

        var (steps, next) = Follow(ReadKinds.BankGas, Books.TwoBanks, read => new BankGas(Bank(read), Gas(Bank(read))), (screw, turns) => position[screw.Barrels[0]] += turns);

        Assert.Equal(NextKind.Done, next.Kind);
        Assert.InRange(Gas(1), 0.88, 0.96);
        Assert.All(position.Where(p => p.Key <= 4), p => Assert.Equal(position[1], p.Value));
        Assert.All(position.Where(p => p.Key > 4), p => Assert.Equal(0, p.Value));
        Assert.True(position[1] < 0, "too rich, so in");
        Assert.Equal(0, steps.OfType<Turned>().Count() % 4);
    }

    [Fact]
    public void An_air_screw_goes_in_for_richer_and_says_so()
    {
        var plan = PlanDocument.Read("""
            { "format": "tickover-plan-1", "name": "Wigeon", "layout": "motorcycle four", "cylinders": 4, "sweptVolume": 187, "throttleBore": 28, "closedAngle": 0, "idleSpeed": 1100, "bypass": false, "mixtureScrews": "air",
              "carburettors": [ { "barrels": [[1]] }, { "barrels": [[2]] }, { "barrels": [[3]] }, { "barrels": [[4]] } ] }
            """).Plan!;
        var lambda = new Dictionary<int, double> { [1] = 1.02, [2] = 0.92, [3] = 0.92, [4] = 0.92 };

        var (steps, next) = Follow(ReadKinds.Lambda, plan, read => Lambda(read.Barrels[0], lambda[read.Barrels[0]]), (screw, turns) => lambda[screw.Barrels[0]] += -0.1 * turns);

        Assert.Equal(NextKind.Done, next.Kind);
        Assert.True(steps.OfType<Turned>().Sum(t => t.Turns) > 0, "richer is positive");
        Assert.Contains("idle air screw", plan.Find("mixture:1")!.Thing, StringComparison.Ordinal);
        Assert.Equal(("in", "out"), (plan.Find("mixture:1")!.More, plan.Find("mixture:1")!.Less));
    }

    [Fact]
    public void A_plan_with_screws_of_neither_kind_is_told()
    {
        var (plan, faults) = PlanDocument.Read("""
            { "format": "tickover-plan-1", "name": "Wigeon", "layout": "in line", "cylinders": 2, "sweptVolume": 187, "throttleBore": 28, "closedAngle": 0, "idleSpeed": 1100, "bypass": false, "mixtureScrews": "fuel",
              "carburettors": [ { "barrels": [[1]] }, { "barrels": [[2]] } ] }
            """);

        Assert.Null(plan);
        Assert.Contains("mixtureScrews: \"emulsion\" where out is richer", Assert.Single(faults), StringComparison.Ordinal);
    }

    private static RoundRead Lambda(int barrel, double lambda) => One(new BarrelReading(barrel) { Lambda = lambda, Rpm = 900 });

    private static RoundRead Rpm(int barrel, double rpm) => One(new BarrelReading(barrel) { Rpm = rpm });

    private static RoundRead One(BarrelReading reading) => new(new BalanceRound { Number = 9, Readings = [reading] });

    private static (IReadOnlyList<BalanceStep> Steps, NextMove Next) Follow(ReadKinds kind, EnginePlan plan, Func<NextMove, BalanceStep> read, Action<Adjuster, double> turn)
    {
        var (steps, next, _) = FollowWithRemarks(kind, plan, read, turn);
        return (steps, next);
    }

    private static (IReadOnlyList<BalanceStep> Steps, NextMove Next, IReadOnlyList<string> Remarks) FollowWithRemarks(ReadKinds kind, EnginePlan plan, Func<NextMove, BalanceStep> read, Action<Adjuster, double> turn)
    {
        List<BalanceStep> steps = [.. Begin(plan)];
        for (var k = 0; k < MostSteps; k++)
        {
            var advice = BalanceAdvice.Of(new BalanceBook { Plan = plan, Steps = steps, Meter = new MeterSettings { Available = ReadKinds.Air | kind } });
            if (advice.Next.Kind == NextKind.Done)
            {
                return (steps, advice.Next, advice.Remarks);
            }

            if (advice.Next is { Kind: NextKind.Turn, Adjuster: { } screw })
            {
                turn(screw, advice.Next.Turns);
                steps.Add(new Turned(screw.Key, advice.Next.Turns));
            }
            else
            {
                Assert.Equal((NextKind.Read, kind), (advice.Next.Kind, advice.Next.Read & kind));
                steps.Add(read(advice.Next));
            }
        }

        throw new InvalidOperationException($"No end after {MostSteps} steps.");
    }

    private static BalanceStep[] Begin(EnginePlan plan) => plan == Books.TwoBanks ? Alike : [Books.Idle(4, 4, 4, 4), Books.Held(3000, 9, 9, 9, 9)];
}
