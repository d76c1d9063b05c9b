namespace Tickover.Cli;

/// <summary>What the program says to the shell when it ends; documented in README and in <c>tickover --help</c>.</summary>
internal static class ExitCode
{
    /// <summary>Done; for a check, the answer is yes.</summary>
    public const int Done = 0;

    /// <summary>The command ran and the answer is no: the document has faults.</summary>
    public const int AnswerIsNo = 1;

    /// <summary>Nothing could be computed from what was given.</summary>
    public const int UnusableInput = 2;

    /// <summary>A fault of the program itself.</summary>
    public const int InternalFault = 3;

    /// <summary>Stopped from the keyboard: 128 and the number of the signal, as shells have it.</summary>
    public const int Stopped = 130;
}
