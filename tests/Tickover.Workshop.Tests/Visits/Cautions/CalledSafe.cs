using System.Text.RegularExpressions;

namespace Tickover.Workshop.Tests.Visits.Cautions;

/// <summary>Words that would pronounce something free of danger.</summary>
internal static partial class CalledSafe
{
    [GeneratedRegex(@"\b(safe|safely|harmless|no danger|no risk|risk-free)\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    public static partial Regex Pattern();
}
