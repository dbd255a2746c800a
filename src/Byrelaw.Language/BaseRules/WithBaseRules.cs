namespace Byrelaw.Language.BaseRules;

/// <summary>Rule files, and beside them the program's own, which use one another within their edition.</summary>
/// <param name="files">Where all other files come from.</param>
internal sealed class WithBaseRules(IRuleFiles files) : IRuleFiles
{
    /// <inheritdoc/>
    public string Resolve(string from, string relative) =>
        BaseEditions.IsPath(from) ? BaseEditions.Path(BaseEditions.Parse(from).Edition, BaseEditions.Spaced(relative)) : files.Resolve(from, relative);

    /// <inheritdoc/>
    public string Show(string path)
    {
        if (!BaseEditions.IsPath(path))
        {
            return files.Show(path);
        }

        var (edition, name) = BaseEditions.Parse(path);
        return $"base {name} edition {edition}";
    }

    /// <inheritdoc/>
    public byte[]? Read(string path)
    {
        if (!BaseEditions.IsPath(path))
        {
            return files.Read(path);
        }

        var (edition, name) = BaseEditions.Parse(path);
        return BaseEditions.Read(edition, name);
    }
}
