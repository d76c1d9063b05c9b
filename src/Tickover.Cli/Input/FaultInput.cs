using System.CommandLine;
using Tickover.Cli.Output;
using Tickover.Workshop.FaultFinding;

namespace Tickover.Cli.Input;

/// <summary>Reads a case from a document and from what is typed.</summary>
/// <param name="terminal">Gives the files.</param>
internal sealed class FaultInput(Terminal terminal)
{
    private readonly Option<string?> _case = new("--case") { Description = "A case document (docs/faults-document.md), or - for the standard input.", HelpName = "FILE" };
    private readonly Option<string[]> _symptoms = new("--symptom", "-s") { Description = "What is wrong, by key or in words. May be given several times.", HelpName = "TEXT" };
    private readonly Option<string[]> _ruledOut = new("--ruled-out") { Description = "A cause that has been ruled out already. May be given several times.", HelpName = "CAUSE" };
    private readonly Option<string[]> _answers = new("--answer") { Description = "What a test has shown: its key, then the answer, yes, no or unsure; a question mark behind the answer: rather so than not. May be given several times.", HelpName = "TEST=ANSWER" };
    private readonly Option<string[]> _knowledge = new("--knowledge") { Description = "A workshop's own causes, symptoms, tests and closed cases, on top of the table of the trade (docs/faults-document.md). May be given several times.", HelpName = "FILE" };

    /// <summary>Adds the options.</summary>
    /// <param name="command">To this.</param>
    public void AddTo(Command command)
    {
        command.Add(_case);
        command.Add(_symptoms);
        command.Add(_ruledOut);
        command.Add(_answers);
        command.Add(_knowledge);
    }

    /// <summary>Whether the case comes by the standard input.</summary>
    /// <param name="parsed">The line.</param>
    /// <returns>True where it does.</returns>
    public bool TakesStandardInput(ParseResult parsed) => string.Equals(parsed.GetValue(_case), CarFile.StandardInput, StringComparison.Ordinal);

    /// <summary>Reads what is known of causes.</summary>
    /// <param name="parsed">The line.</param>
    /// <returns>The knowledge, or why it cannot be used.</returns>
    public Answer<FaultKnowledge> Knowledge(ParseResult parsed)
    {
        var knowledge = FaultKnowledge.Standard;
        foreach (var file in parsed.GetValue(_knowledge) ?? [])
        {
            var text = CarFile.Read(file, terminal);
            if (!text.Good)
            {
                return Answer<FaultKnowledge>.No(text.Complaint);
            }

            var reading = FaultKnowledgeDocument.Read(text.Value, knowledge);
            if (reading.Knowledge is not { } more)
            {
                return Answer<FaultKnowledge>.No($"{file} cannot be used:{Environment.NewLine}{FaultTable.Text(reading.Faults, terminal.Width)}");
            }

            knowledge = more;
        }

        return knowledge;
    }

    /// <summary>Reads the case.</summary>
    /// <param name="parsed">The line.</param>
    /// <param name="knowledge">What its words are looked up in.</param>
    /// <returns>The case, or why it cannot be used.</returns>
    public Answer<FaultCase> Case(ParseResult parsed, FaultKnowledge knowledge)
    {
        var given = Document(parsed, knowledge);
        foreach (var symptom in parsed.GetValue(_symptoms) ?? [])
        {
            given = given.Good ? WithSymptom(given.Value, knowledge, symptom) : given;
        }

        foreach (var cause in parsed.GetValue(_ruledOut) ?? [])
        {
            given = given.Good ? WithRuledOut(given.Value, knowledge, cause) : given;
        }

        foreach (var answer in parsed.GetValue(_answers) ?? [])
        {
            given = given.Good ? WithAnswer(given.Value, knowledge, answer) : given;
        }

        return given is { Good: true, Value.Symptoms.Count: 0 }
            ? Answer<FaultCase>.No("What is wrong with the car? Give --symptom, such as --symptom \"flat spot only on a stab\", or --case FILE. 'tickover fault --list symptoms' prints them all.")
            : given;
    }

    private Answer<FaultCase> Document(ParseResult parsed, FaultKnowledge knowledge)
    {
        if (parsed.GetValue(_case) is not { } file)
        {
            return new FaultCase();
        }

        var text = CarFile.Read(file, terminal);
        if (!text.Good)
        {
            return Answer<FaultCase>.No(text.Complaint);
        }

        var reading = FaultCaseDocument.Read(text.Value, knowledge);
        return reading.Case is { } given ? given : Answer<FaultCase>.No($"{file} cannot be used:{Environment.NewLine}{FaultTable.Text(reading.Faults, terminal.Width)}");
    }

    private static Answer<FaultCase> WithSymptom(FaultCase given, FaultKnowledge knowledge, string text)
    {
        var (meant, closest) = SymptomSearch.Find(knowledge, text);
        if (meant is null)
        {
            return Answer<FaultCase>.No($"There is no symptom \"{text}\". {SymptomSearch.Offer(closest)}");
        }

        return given.Symptoms.Contains(meant.Key, StringComparer.Ordinal) ? given : given with { Symptoms = [.. given.Symptoms, meant.Key] };
    }

    private static Answer<FaultCase> WithRuledOut(FaultCase given, FaultKnowledge knowledge, string text) => CauseSearch.Find(knowledge, text) is { } cause
        ? given with { RuledOut = [.. given.RuledOut, cause.Key] }
        : Answer<FaultCase>.No($"There is no cause \"{text}\". {CauseSearch.Offer(knowledge, text)}");

    private static Answer<FaultCase> WithAnswer(FaultCase given, FaultKnowledge knowledge, string text)
    {
        if (text.Split('=', 2) is not [var key, var said])
        {
            return Answer<FaultCase>.No($"--answer {text}: write the test's key, an equals sign and the answer, such as look-cap-seal=yes.");
        }

        if (knowledge.Test(key.Trim()) is not { } test)
        {
            return Answer<FaultCase>.No($"There is no test \"{key}\". 'tickover fault --list tests' prints them all.");
        }

        return FaultReply.Read(test, said) is { } reply
            ? given.With(reply)
            : Answer<FaultCase>.No($"\"{said}\" is no answer to {test.Key}, \"{test.Question}\" Write {FaultReply.Allowed(test)}.");
    }
}
