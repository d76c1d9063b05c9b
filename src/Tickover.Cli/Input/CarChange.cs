namespace Tickover.Cli.Input;

/// <summary>A change to one place of a document.</summary>
/// <param name="Path">The place, such as <c>barrel.mainJet</c>.</param>
/// <param name="Text">The new text.</param>
internal sealed record CarChange(string Path, string Text)
{
    /// <summary>Reads "barrel.mainJet=140".</summary>
    /// <param name="text">As typed after --set.</param>
    /// <returns>The change, or a complaint.</returns>
    public static Answer<CarChange> Read(string text)
    {
        var at = text.IndexOf('=', StringComparison.Ordinal);
        return at <= 0
            ? Answer<CarChange>.No($"--set {text}: write it as path=value, such as barrel.mainJet=140 or carburettors[0].barrels[1].choke=\"31 mm\".")
            : new CarChange(text[..at].Trim(), text[(at + 1)..].Trim().Trim('"'));
    }
}
