using Byrelaw.Workshop.Tidying;

namespace Byrelaw.LanguageServer.Answers;

/// <summary>Prints a document the one way, as <c>byrelaw tidy</c> does.</summary>
internal static class Formatting
{
    /// <summary>The edit that tidies it; none where it is tidy. Refused with the reason where it is left alone.</summary>
    public static List<TextEdit> Of(Workspace workspace, DocumentName document)
    {
        var path = FilePaths.Of(document.Uri);
        if (Tidier.Tidy(path, workspace.Files) is not { } tidied)
        {
            return [];
        }

        if (tidied.Text is not { } text)
        {
            throw new RequestException(ErrorCode.RequestFailed, tidied.Errors.FirstOrDefault() is { } error
                ? $"a file with errors is left as it is; the first is in {error.File}, line {error.Line}: {error.Message}"
                : $"the file is left as it is: tidied, it would differ in {tidied.WouldChange}");
        }

        var lines = TextLines.Of(tidied.Source);
        return tidied.IsTidy ? [] : [new TextEdit(lines.All, text)];
    }
}
