namespace Byrelaw.Language.Reading;

/// <summary>Where rule files come from: a disk, an editor's open documents, a test's dictionary.</summary>
public interface IRuleFiles
{
    /// <summary>The path that a <c>use</c> in one file means.</summary>
    /// <param name="from">The using file's path, as given to <see cref="Read"/>.</param>
    /// <param name="relative">What stands in the <c>use</c>, forward slashes.</param>
    string Resolve(string from, string relative);

    /// <summary>The path as shown in messages: relative to where the person works, forward slashes.</summary>
    string Show(string path);

    /// <summary>The file's bytes; null where there is none.</summary>
    byte[]? Read(string path);
}
