namespace Byrelaw.LanguageServer.Files;

/// <summary>A document as it stands in the editor.</summary>
/// <param name="uri">Its address as the client spells it.</param>
/// <param name="version">The client's count of its edits.</param>
/// <param name="text">What it says.</param>
internal sealed class OpenDocument(string uri, int? version, string text)
{
    private byte[]? _bytes;

    public string Uri => uri;

    public int? Version { get; private set; } = version;

    public string Text { get; private set; } = text;

    /// <summary>As it would be saved.</summary>
    public byte[] Bytes => _bytes ??= Encoding.UTF8.GetBytes(Text);

    /// <summary>Makes edits, each in the text that the one before left.</summary>
    public void Apply(int? version, IEnumerable<TextChange> changes)
    {
        foreach (var change in changes)
        {
            if (change.Range is null)
            {
                Text = change.Text;
                continue;
            }

            var lines = new TextLines(Text);
            var (start, end) = (lines.Offset(change.Range.Start), lines.Offset(change.Range.End));
            Text = string.Concat(Text.AsSpan(0, start), change.Text, Text.AsSpan(Math.Max(start, end)));
        }

        Version = version;
        _bytes = null;
    }
}
