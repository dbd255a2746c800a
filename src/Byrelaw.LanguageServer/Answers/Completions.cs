using Byrelaw.Workshop.Editing.Suggestions;

namespace Byrelaw.LanguageServer.Answers;

/// <summary>What may stand at a place.</summary>
internal static class Completions
{
    // From CompletionItemKind of LSP 3.17.
    private const int Function = 3;
    private const int Property = 10;
    private const int Unit = 11;
    private const int Keyword = 14;
    private const int File = 17;
    private const int EnumMember = 20;
    private const int Constant = 21;
    private const int Event = 23;

    /// <summary>The suggestions in their order.</summary>
    public static CompletionList At(Workspace workspace, PlaceParams place)
    {
        if (workspace.At(place) is not var (reading, file, offset))
        {
            return new CompletionList(false, []);
        }

        var suggestions = reading.View.MayStandAt(file, offset, () => Usable(workspace, reading));
        return new CompletionList(false, [.. suggestions.Select(Item)]);
    }

    private static CompletionItem Item(Suggestion suggestion, int place) => new(
        suggestion.Text, Kind(suggestion), suggestion.Detail, string.Create(CultureInfo.InvariantCulture, $"{suggestion.Rank}{place:0000}"),
        suggestion.Text, new TextEdit(TextLines.Range(suggestion.Replaces), suggestion.Text));

    private static int Kind(Suggestion suggestion) => suggestion.Sort switch
    {
        NameSort.Event or NameSort.Test => Event,
        NameSort.Measure or NameSort.Fact => Property,
        NameSort.Answer or NameSort.Value => EnumMember,
        NameSort.Define or NameSort.Spell or NameSort.Rule => Function,
        NameSort.Date or NameSort.List => Constant,
        null when suggestion.Detail.StartsWith("a unit", StringComparison.Ordinal) => Unit,
        null when suggestion.Text[0] == '"' => File,
        _ => Keyword,
    };

    /// <summary>Rule files of the editor's folders, or beside the document, as a <c>use</c> would write them.</summary>
    private static List<string> Usable(Workspace workspace, RootReading reading)
    {
        var folder = Path.GetDirectoryName(reading.Path);
        if (!Path.IsPathFullyQualified(reading.Path) || folder is null)
        {
            return [];
        }

        var known = reading.View.Files.Select(file => reading.PathOf(file.Path)).ToHashSet(StringComparer.Ordinal);
        return [.. RuleFilesInFolders.Of(workspace.Files.Folders.DefaultIfEmpty(folder)).Where(path => !known.Contains(path))
            .Select(path => Path.GetRelativePath(folder, path).Replace(Path.DirectorySeparatorChar, '/')).Order(StringComparer.Ordinal)];
    }
}
