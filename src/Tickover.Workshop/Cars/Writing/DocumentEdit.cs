using System.Text;
using Tickover.Workshop.Cars.Reading;

namespace Tickover.Workshop.Cars.Writing;

/// <summary>Changes single members in the text of a document and leaves every other byte as it is.</summary>
internal sealed class DocumentEdit
{
    private byte[] _bytes;
    private SourceNode _root;

    /// <summary>Begins with a document.</summary>
    /// <param name="json">The text; a sound document.</param>
    public DocumentEdit(string json)
    {
        _bytes = Encoding.UTF8.GetBytes(json);
        _root = Parse();
    }

    /// <summary>The text as changed so far.</summary>
    public string Text => Encoding.UTF8.GetString(_bytes);

    /// <summary>How many items a list has.</summary>
    /// <param name="path">The list.</param>
    /// <returns>The number; 0 where there is no list.</returns>
    public int CountAt(DocumentPath path) => path.In(_root)?.Items.Count ?? 0;

    /// <summary>Whether something stands at a path.</summary>
    /// <param name="path">The path.</param>
    /// <returns>True where something does.</returns>
    public bool Has(DocumentPath path) => path.In(_root) is not null;

    /// <summary>Writes a member, in place of the one there or as a new one.</summary>
    /// <param name="path">The member; the objects above it are made where they are missing.</param>
    /// <param name="json">Its value, JSON.</param>
    public void Set(DocumentPath path, string json)
    {
        if (path.In(_root) is { } there)
        {
            Splice(there.Start, there.End, json);
            return;
        }

        if (path.Above.In(_root) is null)
        {
            Set(path.Above, "{}");
        }

        Insert(path.Above.In(_root)!, $"\"{path.Name}\": {json}");
    }

    /// <summary>Takes a member out; nothing happens where there is none.</summary>
    /// <param name="path">The member.</param>
    public void Remove(DocumentPath path)
    {
        var members = path.Above.In(_root)?.Members ?? [];
        var index = members.TakeWhile(m => !string.Equals(m.Name, path.Name, StringComparison.Ordinal)).Count();
        if (index == members.Count)
        {
            return;
        }

        var member = members[index];
        if (index > 0)
        {
            Splice(members[index - 1].Value.End, member.Value.End, string.Empty);
        }
        else if (members.Count > 1)
        {
            Splice(member.Start, members[1].Start, string.Empty);
        }
        else
        {
            Splice(member.Start, member.Value.End, string.Empty);
        }
    }

    private void Insert(SourceNode into, string member)
    {
        if (into.Members.Count == 0)
        {
            Splice(into.Start, into.End, $"{{ {member} }}");
            return;
        }

        var last = into.Members[^1];
        Splice(last.Value.End, last.Value.End, $",{SpaceBefore(last.Start)}{member}");
    }

    /// <summary>A new line with the same indent where the last member begins a line, else a blank.</summary>
    private string SpaceBefore(int start)
    {
        var line = start == 0 ? -1 : Array.LastIndexOf(_bytes, (byte)'\n', start - 1);
        var indent = Encoding.UTF8.GetString(_bytes, line + 1, start - line - 1);
        return line >= 0 && string.IsNullOrWhiteSpace(indent) ? "\n" + indent : " ";
    }

    private void Splice(int start, int end, string text)
    {
        _bytes = [.. _bytes.AsSpan(0, start), .. Encoding.UTF8.GetBytes(text), .. _bytes.AsSpan(end)];
        _root = Parse();
    }

    private SourceNode Parse() =>
        SourceParser.Parse(Text, out var fault) ?? throw new InvalidOperationException($"An edit broke the document at {fault!.Path}: {fault.Problem}.");
}
