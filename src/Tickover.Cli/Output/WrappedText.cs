using System.Text;

namespace Tickover.Cli.Output;

/// <summary>Sentences broken between words, and never between a number and its unit.</summary>
internal static class WrappedText
{
    private const char Unbroken = '\u00A0';

    /// <summary>A text that stays on one line, such as "70 %".</summary>
    /// <param name="text">The text.</param>
    /// <returns>The text for <see cref="Append"/>.</returns>
    public static string Whole(string text) => text.Replace(' ', Unbroken);

    /// <summary>Adds a sentence; lines after the first stand two columns further in.</summary>
    /// <param name="text">What to add it to.</param>
    /// <param name="width">Columns to fill.</param>
    /// <param name="indent">What every line begins with.</param>
    /// <param name="sentence">The sentence.</param>
    public static void Append(StringBuilder text, int width, string indent, string sentence)
    {
        var line = new StringBuilder(indent);
        var empty = true;
        foreach (var word in sentence.Split(' '))
        {
            if (!empty && line.Length + 1 + word.Length > width)
            {
                text.AppendLine(line.ToString());
                line.Clear().Append(indent).Append("  ");
                empty = true;
            }

            line.Append(empty ? string.Empty : " ").Append(word.Replace(Unbroken, ' '));
            empty = false;
        }

        text.AppendLine(line.ToString());
    }
}
