namespace Byrelaw.LanguageServer.Answers;

/// <summary>What is told of the name under the pointer.</summary>
internal sealed class Hovers(Workspace workspace, RuleCounts counts)
{
    /// <summary>What the name means; and for a rule, counted while other messages are taken, how many animals it lets in.</summary>
    public Task<Hover?> At(PlaceParams place, CancellationToken cancelled)
    {
        if (workspace.At(place) is not var (reading, file, offset) || reading.View.NameAt(file, offset) is not { } use)
        {
            return Task.FromResult<Hover?>(null);
        }

        var range = TextLines.Range(use.Span);
        var meaning = Meanings.Of(reading, use.Thing) ?? workspace.ReadingsWith(reading.Path).Select(other => Meanings.Of(other.Reading, use.Thing)).FirstOrDefault(found => found is not null);
        if (meaning is null)
        {
            return Task.FromResult<Hover?>(null);
        }

        var programmes = use.Thing.Sort != NameSort.Rule ? [] : workspace.ReadingsWith(reading.PathOf(file.Path)).Select(other => other.Reading)
            .Where(other => other.View.Reading.Rulebook is { Programme: not null, Records: not null }).ToList();
        return programmes.Count == 0
            ? Task.FromResult<Hover?>(Show(meaning, range))
            : Task.Run<Hover?>(() => Show(meaning + string.Concat(programmes.Select(programme => Counted(programme, use.Thing))), range), cancelled);
    }

    private string Counted(RootReading programme, NamedThing rule)
    {
        var name = programme.View.Reading.Rulebook.Rules.FirstOrDefault(other => NamedThing.Of(NameSort.Rule, other.Name) == rule)?.Name;
        try
        {
            return name is null ? "" : string.Concat(counts.Of(programme, name).Select(count => "\n\n" + CountText.Of(count)));
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or Records.Reading.RecordsNotFoundException)
        {
            return $"\n\nHow many animals it lets in cannot be told: {Markdown.Text(exception.Message)}.";
        }
    }

    private static Hover Show(string text, Protocol.Range range) => new(new Markup("markdown", text), range);
}
