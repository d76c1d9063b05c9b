using System.Security.Cryptography;
using System.Text;

namespace Tickover.Workshop.Visits;

/// <summary>What a person said of the columns of one logger's files, so that the next file with the same headings is read alike without asking.</summary>
public sealed record LoggerLayout : RecordItem<LoggerLayout>
{
    /// <summary>The headings such a file has, in their order, put together by the reader of logs.</summary>
    public string Headings { get; init; } = "";

    /// <summary>What was said, as the reader of logs writes it.</summary>
    public string Layout { get; init; } = "";

    /// <summary>The number of the item for a row of headings: there is one layout for it, whoever corrects it.</summary>
    /// <param name="headings">The headings.</param>
    /// <returns>The number.</returns>
    public static Id<LoggerLayout> IdFor(string headings) =>
        new(new Guid(SHA256.HashData(Encoding.UTF8.GetBytes("tickover logger " + headings)).AsSpan(0, 16)));
}
