using System.Globalization;
using Tickover.Practice;
using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Web.Balance;

/// <summary>The practice engine: chosen, read, turned, its fault named, scored. All it has been through stands in the address.</summary>
internal static class PracticeEndpoints
{
    private const int LongestActs = 6000;
    private const int LargestSeed = 999_999;

    public static void MapPractice(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/practice", (PracticeEngines engines) => Pages.Show<PracticeStartPage>(new { engines.All }));
        routes.MapPost("/practice", async (HttpContext context, PracticeEngines engines) =>
        {
            var fields = new FormFields(await context.Request.ReadFormAsync());
            var seed = Math.Clamp(fields.Whole("seed", "Number") ?? Random.Shared.Next(1, 1000), 0, LargestSeed);
            var difficulty = Math.Clamp(fields.Whole("difficulty", "Difficulty") ?? 1, 0, PracticeEngine.Hardest);
            return engines.Find(fields.Text("car")) is null
                ? Pages.NotFound("There is no such engine to practise on.", "Choose one of the list.")
                : Results.Redirect(Of(fields.Text("car"), seed, difficulty, ""));
        }).GuardForm();
        var run = routes.MapGroup("/practice/{car}/{difficulty:int:range(0,3)}/{seed:int:range(0,999999)}");
        run.MapGet("", (string car, int difficulty, int seed, string? acts, string? at, PracticeEngines engines) => OnEngine(engines, car, plan => Show(plan, (car, seed, difficulty), acts ?? "", at)));
        run.MapPost("/acts", async (string car, int difficulty, int seed, HttpContext context, PracticeEngines engines) =>
        {
            var fields = new FormFields(await context.Request.ReadFormAsync());
            return OnEngine(engines, car, plan => Results.Redirect(Of(car, seed, difficulty, Next(plan, (seed, difficulty), fields, context))));
        }).GuardForm();
        run.MapPost("/undo", async (string car, int difficulty, int seed, HttpContext context, string? acts) =>
        {
            _ = await context.Request.ReadFormAsync();
            Notice.Leave(context, "Undone: the last act.");
            return Results.Redirect(Of(car, seed, difficulty, PracticeRun.Without(acts ?? "")));
        }).GuardForm();
    }

    /// <summary>Address of an engine with what it has been through.</summary>
    public static string Of(string car, int seed, int difficulty, string acts) =>
        string.Create(CultureInfo.InvariantCulture, $"/practice/{car}/{difficulty}/{seed}{(acts.Length > 0 ? $"?acts={Uri.EscapeDataString(acts)}" : "")}");

    private static IResult OnEngine(PracticeEngines engines, string car, Func<EnginePlan, IResult> page) =>
        engines.Find(car) is { } plan ? page(plan) : Pages.NotFound("There is no such engine to practise on.", "Choose one of the list under /practice.");

    private static IResult Show(EnginePlan plan, (string Car, int Seed, int Difficulty) which, string acts, string? at)
    {
        if (acts.Length > LongestActs)
        {
            return Pages.Error(StatusCodes.Status414UriTooLong, "This address holds more than a day's work.", ["Begin again with the same number."], "/practice", "Practice");
        }

        var run = PracticeRun.Play(plan, which.Seed, which.Difficulty, acts);
        var book = new BalanceBook { Plan = run.Plan, Steps = run.Steps, Meter = new MeterSettings { Available = PracticeEngine.AllKinds } };
        var isChosen = at is "idle" or "1500" or "2500" or "3000";
        double? held = double.TryParse(at, NumberStyles.None, CultureInfo.InvariantCulture, out var rpm) ? rpm : null;
        var here = string.Create(CultureInfo.InvariantCulture, $"/practice/{which.Car}/{which.Difficulty}/{which.Seed}");
        var bench = BalanceBench.Of(book, (held, isChosen), $"{here}/acts") with { Acts = acts };
        return Pages.Show<PracticePage>(new { Run = run, Bench = bench, Here = here, which.Seed, which.Difficulty });
    }

    // What was refused changes nothing and is said on the next page.
    private static string Next(EnginePlan plan, (int Seed, int Difficulty) which, FormFields fields, HttpContext context)
    {
        var acts = fields.Text("acts");
        if (acts.Length > LongestActs)
        {
            return "";
        }

        if (PracticeAct.Of(fields, plan) is not { } act)
        {
            Notice.Leave(context, fields.Problems.Count > 0 ? string.Join(" ", fields.Problems) : "That is nothing to do here.");
            return acts;
        }

        var tried = PracticeRun.Play(plan, which.Seed, which.Difficulty, PracticeRun.With(acts, act));
        Notice.Leave(context, tried.Last?.Words ?? "Nothing came of it.");
        return tried.Last is { Done: true } ? PracticeRun.With(acts, act) : acts;
    }
}
