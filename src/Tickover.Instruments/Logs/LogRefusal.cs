namespace Tickover.Instruments.Logs;

/// <summary>Why a log cannot be used, and what would do.</summary>
/// <param name="Because">The kind.</param>
/// <param name="Missing">What is wrong or missing, one sentence.</param>
/// <param name="WhatWouldDo">What to do, one sentence.</param>
public sealed record LogRefusal(LogRefusedBecause Because, string Missing, string WhatWouldDo)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Missing} {WhatWouldDo}";
}
