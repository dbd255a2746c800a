using Byrelaw.Language.Canonical;
using Byrelaw.Records.Ade;

namespace Byrelaw.Records.Suggesting;

/// <summary>Lines for files of messages of the ICAR exchange: one for each folder of them, for each file beside others.</summary>
internal sealed class MessageLines
{
    private const int Indent = 2;

    private readonly SortedDictionary<string, bool> _sources = new(StringComparer.Ordinal);

    /// <summary>Looks at a file; says what it holds.</summary>
    public string Take(string name, byte[] bytes)
    {
        var messages = AdeFile.Read(name, bytes, out _) ?? [];
        if (!messages.Any(message => message.Type.Length > 0))
        {
            return "no messages of the ICAR exchange";
        }

        var folder = name.LastIndexOf('/') is > 0 and var at ? name[..at] : name;
        _sources[folder] = _sources.GetValueOrDefault(folder) || messages.Any(IsOfGreenwich);
        return messages.Count == 1 ? "1 message" : $"{messages.Count} messages";
    }

    /// <summary>The lines.</summary>
    public IEnumerable<SuggestedLine> Make()
    {
        foreach (var (source, isOfGreenwich) in _sources)
        {
            var line = $"from {NameText.Text(source)}, as layout \"ICAR ADE\"";
            yield return isOfGreenwich
                ? new SuggestedLine(Indent, $"{line}, times in \"FILL-IN\"", IsOpen: true, "its times are Greenwich's: of which zone are the farm's days, such as \"Pacific/Auckland\"?")
                : new SuggestedLine(Indent, line);
        }
    }

    private static bool IsOfGreenwich(AdeResource message) => message.Text("eventDateTime").EndsWith('Z') || message.Text("birthDate").EndsWith('Z');
}
