namespace Tickover.Reports.StripDown;

/// <summary>How a thing stands to its limit.</summary>
internal enum Condition
{
    /// <summary>Within it.</summary>
    Within = 0,

    /// <summary>To be watched, or not sure.</summary>
    Watch = 1,

    /// <summary>To be put right soon.</summary>
    Soon = 2,

    /// <summary>Outside it.</summary>
    Outside = 3,
}
