namespace Byrelaw.LanguageServer.Answers;

/// <summary>
/// Gives a thing another name, in every file that names it. One spelling is renamed: the other names of the thing stay.
/// Before anything is answered the files are read as they would be; if that breaks something, the rename is refused.
/// </summary>
internal static class Renames
{
    private static readonly string[] FixedDates = ["collection", "first transfer", "final transfer"];

    /// <summary>What would be renamed; refused where nothing can be.</summary>
    public static PrepareRenameResult? Prepare(Workspace workspace, PlaceParams place)
    {
        var (_, use) = Named(workspace, place);
        return new PrepareRenameResult(TextLines.Range(use.Span), use.Span.Text);
    }

    /// <summary>The edits.</summary>
    public static WorkspaceEdit Make(Workspace workspace, RenameParams asked)
    {
        var (reading, use) = Named(workspace, new PlaceParams(asked.TextDocument, asked.Position));
        var name = asked.NewName.Trim();
        CheckSpelling(use, name);
        var places = new Dictionary<(string Path, int Start), (SourceSpan Span, bool InQuotes)>();
        var concerned = new HashSet<RootReading> { reading };
        foreach (var (other, found) in Everywhere.Uses(workspace, reading, use.Thing).Where(found => found.Use.Spelling == use.Spelling))
        {
            concerned.Add(other);
            places.TryAdd((other.PathOf(found.Span.File.Path), found.Span.Start), (found.Span, found.InQuotes));
        }

        if (places.Keys.FirstOrDefault(place => BaseEditions.IsPath(place.Path)).Path is not null)
        {
            throw new RequestException(ErrorCode.RequestFailed, $"`{use.Span.Text}` is a word of the base rules, which never change; give it one more name with `call`");
        }

        CheckFree(concerned, use, name);
        var edits = places.GroupBy(place => place.Key.Path, place => place.Value).ToDictionary(file => file.Key, file => file.OrderBy(place => place.Span.Start).ToList());
        CheckReads(workspace, concerned, edits.ToDictionary(file => file.Key, file => Edited(file.Value, name)));
        return new WorkspaceEdit(edits.ToDictionary(
            file => workspace.Files.Uri(file.Key),
            file => file.Value.ConvertAll(place => new TextEdit(TextLines.Range(place.Span), Written(name, place.InQuotes)))));
    }

    private static (RootReading Reading, NameUse Use) Named(Workspace workspace, PlaceParams place)
    {
        if (workspace.At(place) is not var (reading, file, offset) || reading.View.NameAt(file, offset) is not { } use)
        {
            throw new RequestException(ErrorCode.RequestFailed, "no name stands here that could be changed");
        }

        var isFixed = use.Thing.Sort == NameSort.BuiltIn || (use.Thing.Sort == NameSort.Date && FixedDates.Contains(use.Thing.Key))
            || !Everywhere.Uses(workspace, reading, use.Thing).Any(other => other.Use.Declares);
        return isFixed
            ? throw new RequestException(ErrorCode.RequestFailed, $"`{use.Span.Text}` is a word of the language itself and keeps its name")
            : (reading, use);
    }

    private static void CheckSpelling(NameUse use, string name)
    {
        if (name.Length == 0 || name.AsSpan().IndexOfAny('\r', '\n') >= 0)
        {
            throw new RequestException(ErrorCode.RequestFailed, "a name is some words on one line");
        }

        if (use.Thing.Sort != NameSort.Rule && RulebookView.NeedsQuotes(name))
        {
            throw new RequestException(ErrorCode.RequestFailed, $"`{name}` could only be written in quotes, because the language keeps a word or a sign in it for itself; choose other words");
        }
    }

    private static void CheckFree(IEnumerable<RootReading> readings, NameUse use, string name)
    {
        foreach (var reading in readings)
        {
            if (reading.View.WhoHas(use.Thing.Sort, name) is { } taken && !(taken == use.Thing && NameFolding.Fold(name) == use.Spelling))
            {
                throw new RequestException(ErrorCode.RequestFailed, $"`{name}` is taken: {(taken == use.Thing ? "it is another name of the same thing" : $"it is {Words(taken.Sort)} already")}");
            }
        }
    }

    /// <summary>Names meet in more ways than being equal: a phrase may read as an answer and its test.</summary>
    private static void CheckReads(Workspace workspace, IEnumerable<RootReading> readings, Dictionary<string, string> edited)
    {
        foreach (var reading in readings)
        {
            var before = reading.View.Reading.Problems.Count(problem => problem.Severity == Severity.Error);
            var after = RulebookReader.Read(reading.Path, new ReplacedFiles(workspace.Files, path => edited.TryGetValue(path, out var text) ? Encoding.UTF8.GetBytes(text) : null))!.Problems.Where(problem => problem.Severity == Severity.Error).ToList();
            if (after.Count > before)
            {
                throw new RequestException(ErrorCode.RequestFailed, $"with that name {after[0].File}, line {after[0].Line}, would no longer read: {after[0].Message}");
            }
        }
    }

    /// <summary>A file's text with every place changed; from its end to its start, so that places stay where they were.</summary>
    private static string Edited(List<(SourceSpan Span, bool InQuotes)> places, string name)
    {
        var text = places[0].Span.File.Text;
        foreach (var (span, inQuotes) in Enumerable.Reverse(places))
        {
            text = string.Concat(text.AsSpan(0, span.Start), Written(name, inQuotes), text.AsSpan(span.End));
        }

        return text;
    }

    private static string Written(string name, bool inQuotes) =>
        inQuotes ? name.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) : name;

    private static string Words(NameSort sort) => sort switch
    {
        NameSort.Event => "an event",
        NameSort.Measure => "a measure",
        NameSort.Test => "a test",
        NameSort.Answer => "an answer",
        NameSort.Fact => "a fact",
        NameSort.Value => "a value",
        NameSort.Spell => "a spell",
        NameSort.Define => "a defined condition",
        NameSort.Date => "a date of the programme",
        NameSort.List => "a list",
        NameSort.Rule => "a rule or a preference",
        _ => "a word of the language",
    };
}
