namespace Tickover.Web.FaultFinding;

/// <summary>What may be done to a case.</summary>
public enum FaultAct
{
    /// <summary>A symptom is told.</summary>
    Symptom,

    /// <summary>A symptom is taken back.</summary>
    Drop,

    /// <summary>A test is answered: its key, a colon, the answer.</summary>
    Answer,

    /// <summary>The last answer is taken back.</summary>
    Undo,

    /// <summary>A cause is ruled out.</summary>
    Out,

    /// <summary>A cause that was ruled out is brought back.</summary>
    Back,

    /// <summary>A new case is begun.</summary>
    Anew,
}
