namespace Byrelaw.LanguageServer.Answers;

/// <summary>Where a name is declared.</summary>
internal static class Definitions
{
    /// <summary>The declarations of what stands at a place; none where nothing does, or the language itself declares it.</summary>
    public static List<Location> Of(Workspace workspace, PlaceParams place)
    {
        if (workspace.At(place) is not var (reading, file, offset))
        {
            return [];
        }

        if (reading.View.NameAt(file, offset) is not { } use)
        {
            return [.. UsedFile(workspace, reading, file, offset)];
        }

        // The name itself, rather than the further names that other files give it; but a rule may stand in a file above.
        var spans = Declarations(reading, use).DefaultIfEmpty().ToList();
        if (spans is [null])
        {
            return [.. workspace.ReadingsWith(reading.PathOf(file.Path)).SelectMany(other => Declarations(other.Reading, use).SelectMany(span => workspace.Locations(other.Reading, span!.Value))).Distinct()];
        }

        return [.. spans.SelectMany(span => workspace.Locations(reading, span!.Value))];
    }

    private static IEnumerable<SourceSpan?> Declarations(RootReading reading, NameUse use)
    {
        var all = reading.View.UsesOf(use.Thing).Where(other => other.Declares).ToList();
        var own = all.FindAll(other => other.Spelling == use.Thing.Key);
        return (own.Count > 0 ? own[..1] : all).Select(other => (SourceSpan?)other.Span)
            .Concat(all.Count > 0 || use.Thing.Sort != NameSort.Date ? [] : Dates(reading, use.Thing));
    }

    /// <summary><c>first transfer</c> and <c>final transfer</c> are set by a line that does not name them.</summary>
    private static IEnumerable<SourceSpan?> Dates(RootReading reading, NamedThing date) =>
        reading.View.Reading.Rulebook.Programme?.Dates.Where(other => other.Name == date.Key).Select(other => (SourceSpan?)other.Span) ?? [];

    /// <summary>A used file's first line, where the place is its path.</summary>
    private static IEnumerable<Location> UsedFile(Workspace workspace, RootReading reading, SourceFile file, int offset)
    {
        var line = file.Line(file.LineAt(offset)).Trim();
        if (!line.StartsWith("use \"", StringComparison.Ordinal) || line.IndexOf('"', 5) is not (> 0 and var end))
        {
            yield break;
        }

        var path = workspace.Files.Resolve(reading.PathOf(file.Path), line[5..end]);
        if (reading.FileAt(path) is not null)
        {
            yield return new Location(workspace.Files.Uri(path), new Protocol.Range(new Position(0, 0), new Position(0, 0)));
        }
    }
}
