using System.Text.Json;
using Tickover.Cli.Json;
using Tickover.Practice;
using Tickover.Workshop.Balance;

namespace Tickover.Cli.Output;

/// <summary>Advice on a practice engine by what was read and turned so far, as <c>tickover balance</c> would give it on the same steps.</summary>
/// <param name="engine">The engine.</param>
internal sealed class PracticeAdvice(PracticeEngine engine)
{
    /// <summary>The advice on one line of JSON; its form is docs/schemas/balance.schema.json.</summary>
    /// <returns>The line, without its end.</returns>
    public string Json() => JsonSerializer.Serialize(BalanceDocument.Of(engine.Plan, Advice()), CommandJson.OneLine.BalanceDocument);

    /// <summary>The advice in words, and what to say to follow it.</summary>
    /// <param name="width">Columns to fill.</param>
    /// <returns>Lines.</returns>
    public string Text(int width)
    {
        var advice = Advice();
        return $"{new BalanceText(width).Brief(advice)}  Say: {PracticeWords.Of(advice.Next)}{Environment.NewLine}";
    }

    private BalanceAdvice Advice() => BalanceAdvice.Of(new BalanceBook
    {
        Plan = engine.Plan,
        Steps = engine.Steps,
        Meter = new MeterSettings { Available = PracticeEngine.AllKinds },
    });
}
