using System.Text;
using Byrelaw.Language.Reading;

namespace Byrelaw.Language.Tests.Documents;

/// <summary>The files that a page's examples make up.</summary>
internal sealed class PageFiles : IRuleFiles
{
    private readonly Dictionary<string, string> _texts = new(StringComparer.Ordinal);

    public string this[string path]
    {
        set => _texts[path] = value;
    }

    public string Resolve(string from, string relative) => relative;

    public string Show(string path) => path;

    public byte[]? Read(string path) => _texts.TryGetValue(path, out var text) ? Encoding.UTF8.GetBytes(text) : null;
}
