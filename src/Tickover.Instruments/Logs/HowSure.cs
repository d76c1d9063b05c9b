namespace Tickover.Instruments.Logs;

/// <summary>How sure it is what a column was taken for.</summary>
public enum HowSure
{
    /// <summary>Told or remembered; not judged.</summary>
    Told,

    /// <summary>Name, unit and figures agree.</summary>
    Sure,

    /// <summary>Name and figures agree; the unit is inferred from the figures.</summary>
    Likely,

    /// <summary>By the figures alone, or against what the header says.</summary>
    Guess,
}
