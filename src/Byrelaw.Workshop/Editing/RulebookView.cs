using Byrelaw.Workshop.Editing.Outlines;
using Byrelaw.Workshop.Editing.Suggestions;
using Byrelaw.Workshop.Editing.Tokens;

namespace Byrelaw.Workshop.Editing;

/// <summary>
/// A rulebook as an editor looks at it: what every word is, where names are declared and used, and what may
/// stand at a place. Each file is looked at when it is first asked about. For one thread at a time.
/// </summary>
public sealed class RulebookView
{
    private readonly ReadParts _parts;
    private readonly Dictionary<SourceFile, FileNotes> _notes = [];

    /// <summary>Takes what came of reading.</summary>
    /// <param name="reading">From <see cref="RulebookReader.Read"/>.</param>
    public RulebookView(RulebookReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        Reading = reading;
        _parts = reading.Parts ?? throw new ArgumentException("The reading did not come from files.", nameof(reading));
    }

    /// <summary>What came of reading.</summary>
    public RulebookReading Reading { get; }

    /// <summary>All files, the one asked for first.</summary>
    public IReadOnlyList<SourceFile> Files => Reading.Rulebook.Files;

    /// <summary>Every word, number, text, sign and comment of a file, in order.</summary>
    public IReadOnlyList<ClassifiedToken> TokensOf(SourceFile file) => TokenClasses.Of(NotesOf(file));

    /// <summary>Every name in a file that means something, in order.</summary>
    public IEnumerable<NameUse> NamesIn(SourceFile file) => NotesOf(file).Lines.SelectMany(line => line.Names);

    /// <summary>The name at a place or touching it; null where there is none.</summary>
    public NameUse? NameAt(SourceFile file, int offset) =>
        NamesIn(file).Where(use => use.Span.Start <= offset && offset <= use.Span.End).MaxBy(use => use.Span.Start);

    /// <summary>Every place of every file where a thing is named, by any of its names.</summary>
    public IEnumerable<NameUse> UsesOf(NamedThing thing) => Files.SelectMany(NamesIn).Where(use => use.Thing == thing);

    /// <summary>The thing that has a name already; null for a free name.</summary>
    public NamedThing? WhoHas(NameSort sort, string name) => sort switch
    {
        NameSort.Rule or NameSort.List => Files.SelectMany(NamesIn).Select(use => use.Thing).FirstOrDefault(thing => thing == NamedThing.Of(sort, name)),
        _ => _parts.Names.Find(name) is { } symbol ? SymbolThings.Of(symbol) : null,
    };

    /// <summary>Whether a name can only be written in quotes.</summary>
    public static bool NeedsQuotes(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return NameText.Exact(name) != name;
    }

    /// <summary>The blocks of a file in order.</summary>
    public IReadOnlyList<OutlineItem> OutlineOf(SourceFile file) => Outline.Of(FileOf(file).Lines, _parts.Phrases);

    /// <summary>What may stand at a place, the likeliest first.</summary>
    /// <param name="file">One of <see cref="Files"/>.</param>
    /// <param name="offset">In UTF-16 units from the file's start.</param>
    /// <param name="paths">Finds files that could be used, relative to this one, forward slashes.</param>
    public IReadOnlyList<Suggestion> MayStandAt(SourceFile file, int offset, Func<IEnumerable<string>> paths)
    {
        if (Place.At(file, offset) is not { } place)
        {
            return [];
        }

        var rulebook = Reading.Rulebook;
        var rules = rulebook.Rules.Select(rule => rule.Name).Concat(rulebook.Drops.Select(drop => drop.Rule.Name)).Concat(rulebook.Prefers.Select(prefer => prefer.Name));
        var lists = rulebook.Rules.Select(rule => rule.List).Concat(rulebook.Prefers.Select(prefer => prefer.List)).Distinct();
        return Suggester.At(place, _parts, new KnownTexts([.. rules], [.. lists], paths));
    }

    private RuleFile FileOf(SourceFile file) => _parts.Files.First(other => other.Source == file);

    private FileNotes NotesOf(SourceFile file)
    {
        if (!_notes.TryGetValue(file, out var notes))
        {
            _notes[file] = notes = FileNotes.Of(FileOf(file), _parts.Phrases, _parts.Names);
        }

        return notes;
    }
}
