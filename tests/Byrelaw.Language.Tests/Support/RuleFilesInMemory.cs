namespace Byrelaw.Language.Tests.Support;

/// <summary>Rule files in a dictionary, by path with forward slashes.</summary>
public sealed class RuleFilesInMemory : IRuleFiles
{
    private readonly Dictionary<string, byte[]> _files = [];

    public RuleFilesInMemory Add(string path, string text) => Add(path, Encoding.UTF8.GetBytes(text));

    public RuleFilesInMemory Add(string path, byte[] bytes)
    {
        _files[path] = bytes;
        return this;
    }

    public string Resolve(string from, string relative)
    {
        var parts = from.Split('/').SkipLast(1).ToList();
        foreach (var part in relative.Split('/'))
        {
            if (part == ".." && parts.Count > 0)
            {
                parts.RemoveAt(parts.Count - 1);
            }
            else if (part is not "." and not "..")
            {
                parts.Add(part);
            }
        }

        return string.Join('/', parts);
    }

    public string Show(string path) => path;

    public byte[]? Read(string path) => _files.GetValueOrDefault(path);
}
