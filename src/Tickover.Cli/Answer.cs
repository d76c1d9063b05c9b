using System.Diagnostics.CodeAnalysis;

namespace Tickover.Cli;

/// <summary>What became of something a person typed: a value, or a complaint with a way out.</summary>
/// <remarks><c>default</c> has neither and is never given.</remarks>
/// <typeparam name="T">The value's type.</typeparam>
internal readonly record struct Answer<T>
    where T : class
{
    private Answer(T? value, string? complaint)
    {
        Value = value;
        Complaint = complaint;
    }

    /// <summary>The value; null where there is a complaint.</summary>
    public T? Value { get; }

    /// <summary>What is wrong and what to do; null where there is a value.</summary>
    public string? Complaint { get; }

    /// <summary>Whether there is a value.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    [MemberNotNullWhen(false, nameof(Complaint))]
    public bool Good => Complaint is null;

    /// <summary>A value.</summary>
    /// <param name="value">The value.</param>
    public static implicit operator Answer<T>(T value) => new(value, null);

    /// <summary>A complaint.</summary>
    /// <param name="complaint">What is wrong and what to do.</param>
    /// <returns>The answer.</returns>
    public static Answer<T> No(string complaint) => new(null, complaint);
}
