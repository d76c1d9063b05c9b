namespace Tickover.Workshop.Visits.Measures.Units;

/// <summary>One unit of a quantity: how it is written and how it converts.</summary>
/// <param name="Symbol">As shown.</param>
/// <param name="ToSi">From this unit into SI.</param>
/// <param name="FromSi">From SI into this unit.</param>
/// <param name="Spellings">Other ways people write it, in small letters.</param>
internal sealed record QuantityUnit(string Symbol, Func<double, double> ToSi, Func<double, double> FromSi, params string[] Spellings)
{
    /// <summary>Whether a typed unit means this one; spaces, capitals and raised figures do not matter.</summary>
    /// <param name="typed">What stands behind the number.</param>
    /// <returns>Whether it does.</returns>
    public bool IsWritten(string typed)
    {
        var plain = Plain(typed);
        return string.Equals(plain, Plain(Symbol), StringComparison.Ordinal) || Spellings.Any(s => string.Equals(plain, Plain(s), StringComparison.Ordinal));
    }

    private static string Plain(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c) && c is not ('.' or '·' or '^' or '-')))
        .Replace('³', '3').Replace('²', '2').Replace('º', '°').Replace('Ω', 'Ω').Replace('μ', 'µ').ToLowerInvariant();
}
