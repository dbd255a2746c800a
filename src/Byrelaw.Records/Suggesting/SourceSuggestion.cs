using Byrelaw.Language.Canonical;

namespace Byrelaw.Records.Suggesting;

/// <summary>The lines of one file: its <c>from</c> line and those below.</summary>
/// <param name="file">The file.</param>
/// <param name="animals">The columns that may name its animals.</param>
/// <param name="meanings">What headings may mean.</param>
/// <param name="latest">The latest day in all files; null for none.</param>
/// <param name="all">All files.</param>
internal sealed class SourceSuggestion(SuggestedFile file, IReadOnlyList<AnimalColumn> animals, HeadingMeanings meanings, string? latest, IReadOnlyList<SuggestedFile> all)
{
    private const int FromIndent = 2;
    private const int Indent = 4;

    private readonly AnimalColumn? _animal = animals.Count == 0 ? null : animals[0];

    /// <summary>All of them, in the order in which a person reads them.</summary>
    public IEnumerable<SuggestedLine> Lines()
    {
        if (!file.HasHeadings)
        {
            yield return new SuggestedLine(FromIndent, string.Join(", ", file.Written), IsOpen: true, "no row of it looks like headings; where one is, write which behind it, such as `headings in row 2`, and suggest again");
            yield break;
        }

        var rows = Rows();
        var said = rows switch { SourceRows.Animals => "a row for each animal", SourceRows.Events => "a row for each event", _ => null };
        yield return new SuggestedLine(
            FromIndent, string.Join(", ", file.Written.Concat(said is null ? [] : [said])), IsOpen: false,
            said is null ? "write behind it: a row for each animal, or a row for each event" : null);
        foreach (var line in WrittenLines.Dates(file, all).Concat(WrittenLines.Decimals(file)).Concat(Animal()))
        {
            yield return line;
        }

        foreach (var (column, text) in file.Sums)
        {
            yield return new SuggestedLine(Indent, $"leave out rows where {NameText.Text(file.Table.Headings[column])} is {NameText.Text(text)}", IsOpen: true, "a row of sums?");
        }

        foreach (var line in (rows ?? (HasDate() && !IsHeaded("born") ? SourceRows.Events : SourceRows.Animals)) == SourceRows.Animals
            ? new AnimalLines(file, _animal, meanings, latest).Make() : new EventLines(file, _animal, meanings).Make())
        {
            // What a line may say hangs on what a row is about.
            yield return rows is null ? line with { IsOpen = true } : line;
        }
    }

    private IEnumerable<SuggestedLine> Animal()
    {
        if (animals.Count == 0)
        {
            return file.Columns.Where(column => column.Heading.Length > 0 && !column.HoldsDates).Take(4)
                .Select(column => new SuggestedLine(Indent, $"animal in {NameText.Text(column.Heading)}", IsOpen: true, $"{column.Texts.Count} different"));
        }

        var identity = meanings.Vocabulary.Facts.FirstOrDefault(fact => fact.Type == FactType.Identity);
        return animals.Select(animal => new SuggestedLine(
            Indent, $"animal in {NameText.Text(animal.Column.Heading)}{(animal.IsByNumber ? ", by number" : identity is null || !animal.IsByIdentity ? "" : $", by {NameText.Exact(identity.Name)}")}", !animal.IsSure, animal.Remark));
    }

    /// <summary>What a row is about; null where nobody can tell.</summary>
    private SourceRows? Rows() => _animal switch
    {
        null => null,
        { IsSure: false } when !HasDate() => null,
        { Column.AreDifferent: false } => !HasDate() || (IsHeaded("born") && !IsHeaded("date")) ? null : SourceRows.Events,
        _ => file.Columns.Any(column => meanings.IsHeaded(column, "kind")) && HasDate() ? null
            : file.Columns.Any(column => meanings.IsHeaded(column, "date") && column.HoldsDates) || IsVisit() ? SourceRows.Events : SourceRows.Animals,
    };

    /// <summary>Whether it is a sheet of one visit: a number, a day and what was found, and nothing of what is true of an animal.</summary>
    private bool IsVisit() => file.Columns.Count(column => column.HoldsDates) == 1 && !IsHeaded("born") && !IsHeaded("sex") && !IsHeaded("parity")
        && file.Columns.Any(column => column != _animal?.Column && !column.HoldsDates && AnswerHints.TestIn(column, meanings.Vocabulary) is not null);

    private bool IsHeaded(string landed) => file.Columns.Any(column => meanings.IsHeaded(column, landed));

    private bool HasDate() => file.Columns.Any(column => column.HoldsDates);
}
