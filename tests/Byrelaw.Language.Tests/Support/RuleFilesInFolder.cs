namespace Byrelaw.Language.Tests.Support;

/// <summary>Rule files in a folder of the checkout, by path with forward slashes; one of them may have another text.</summary>
public sealed class RuleFilesInFolder(string folder, string? changed = null, string? text = null) : IRuleFiles
{
    private readonly RuleFilesInMemory _paths = new();

    public string Resolve(string from, string relative) => _paths.Resolve(from, relative);

    public string Show(string path) => path;

    public byte[]? Read(string path)
    {
        if (path == changed)
        {
            return Encoding.UTF8.GetBytes(text!);
        }

        var full = Path.Combine(folder, path);
        return File.Exists(full) ? File.ReadAllBytes(full) : null;
    }
}
