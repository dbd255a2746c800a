namespace Byrelaw.Checking.Tests.Support;

/// <summary>Files that stand in a test, by name; others as they lie in the checkout, by their path below its root.</summary>
internal sealed class RuleFiles(params (string Name, string Text)[] files) : IRuleFiles
{
    public string Resolve(string from, string relative) =>
        Path.GetRelativePath(Repository.Root, Path.GetFullPath(relative, Path.GetDirectoryName(Repository.At(from))!)).Replace('\\', '/');

    public string Show(string path) => path;

    public byte[]? Read(string path) => Array.Find(files, file => file.Name == path).Text is { } text ? Encoding.UTF8.GetBytes(text)
        : File.Exists(Repository.At(path)) ? File.ReadAllBytes(Repository.At(path)) : null;
}
