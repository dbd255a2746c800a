namespace Byrelaw.LanguageServer.Answers;

/// <summary>Where a thing is named, by any of its names.</summary>
internal static class References
{
    /// <summary>All places, in every file that shares the declaration.</summary>
    public static List<Location> Of(Workspace workspace, ReferenceParams asked)
    {
        if (workspace.At(new PlaceParams(asked.TextDocument, asked.Position)) is not var (reading, file, offset) || reading.View.NameAt(file, offset) is not { } use)
        {
            return [];
        }

        return [.. Everywhere.Uses(workspace, reading, use.Thing)
            .Where(found => asked.Context?.IncludeDeclaration != false || !found.Use.Declares)
            .SelectMany(found => workspace.Locations(found.Reading, found.Use.Span)).Distinct()];
    }

    /// <summary>Those in the same document.</summary>
    public static List<DocumentHighlight> InDocument(Workspace workspace, PlaceParams place)
    {
        if (workspace.At(place) is not var (reading, file, offset) || reading.View.NameAt(file, offset) is not { } use)
        {
            return [];
        }

        const int Read = 2;
        const int Write = 3;
        return [.. reading.View.NamesIn(file).Where(other => other.Thing == use.Thing).Select(other => new DocumentHighlight(TextLines.Range(other.Span), other.Declares ? Write : Read))];
    }
}
