using Byrelaw.Language.Floors;
using Byrelaw.Language.Rulebooks.RecordSources;

namespace Byrelaw.Judging.Promises;

/// <summary>
/// What may say a promised kind beside the words of what happened: headings that nobody reads, or that are read as something else, facts such as <c>in calf</c>, and results that are read as
/// blank or whose rows are left out.
/// </summary>
internal static class OverlookedBeside
{
    /// <summary>One for each, whether its kind is promised or not.</summary>
    public static IEnumerable<MayBeOverlooked> Find(Rulebook rulebook, Herd herd) =>
        Headings(rulebook, herd).Select(one => (one.Word, one.Kind, In: OverlookedIn.Heading))
            .Concat(Facts(herd).Select(one => (one.Word, one.Kind, In: OverlookedIn.Fact)))
            .Concat(Cells(rulebook, herd).Select(one => (one.Word, one.Kind, In: OverlookedIn.Cell)))
            .Where(one => !IsNone(rulebook, one.Word, one.Kind))
            .Select(one => new MayBeOverlooked(new Hint(one.Word, one.Kind, one.Kind.Declared), one.Kind, one.In));

    /// <summary>Whether a person says that a text is no such kind; where none is named, none at all that a hint could mean.</summary>
    public static bool IsNone(Rulebook rulebook, string text, Kind? kind) =>
        rulebook.Records!.LeaveOut.Any(left => left.IsNot is { } isNot && (kind is null || isNot.Id == kind.Id) && NameFolding.Fold(left.Word) == NameFolding.Fold(text));

    private static IEnumerable<(string Word, Kind Kind)> Headings(Rulebook rulebook, Herd herd)
    {
        var sources = rulebook.Records?.Sources ?? [];
        foreach (var heading in herd.HeadingsNotRead.Concat(sources.SelectMany(source => source.ColumnsLeftOut.Except(source.HeadingsReadBeside(sources), StringComparer.OrdinalIgnoreCase))))
        {
            if (FloorHeadings.MayBe(heading, herd.Vocabulary) is { } kind)
            {
                yield return (heading, kind);
            }
        }

        // What stands in the cells needs no heading, and no language.
        foreach (var heading in herd.HeadingsThatTell.Where(heading => FloorHeadings.MayBe(heading, herd.Vocabulary) is null))
        {
            if (herd.Vocabulary.FindKind("pregnancy test") is { } test)
            {
                yield return (heading, test);
            }
        }

        // What holds a cow back may be called anything; what does not, and is no text of what happened, may hide it.
        foreach (var column in sources.SelectMany(source => source.Columns).Where(column => column.What is KindTarget { Kind: var read } ? !FloorHeadings.Asks(read) : column.What is LandedTarget { Column: "note" }))
        {
            if (FloorHeadings.MayBe(column.Heading, herd.Vocabulary) is { } kind)
            {
                yield return (column.Heading, kind);
            }
        }
    }

    /// <summary>Facts that some animal has, by a name that may say so; one of which all that stands there is "no" says nothing.</summary>
    private static IEnumerable<(string Word, Kind Kind)> Facts(Herd herd)
    {
        foreach (var fact in herd.Vocabulary.Facts.Where(fact => fact.Type != FactType.Identity))
        {
            if (fact.AlsoNames.Prepend(fact.Name).Select(name => FloorHeadings.MayBe(name, herd.Vocabulary)).FirstOrDefault(kind => kind is not null) is { } kind && SaysIt(herd.Facts[fact.Id]))
            {
                yield return (fact.Name, kind);
            }
        }
    }

    private static bool SaysIt(FactColumn column)
    {
        for (var animal = 0; animal < column.States.Length; animal++)
        {
            if (column.States[animal] != FactState.Missing && !(column.States[animal] == FactState.Known && column.Texts.Length > animal && column.Texts[animal] is { } text && FloorHeadings.SaysNone(text)))
            {
                return true;
            }
        }

        return false;
    }

    private static IEnumerable<(string Word, Kind Kind)> Cells(Rulebook rulebook, Herd herd)
    {
        foreach (var source in rulebook.Records?.Sources ?? [])
        {
            foreach (var column in source.Columns)
            {
                if (column.What is KindTarget { Kind: var kind } && FloorHeadings.Asks(kind))
                {
                    foreach (var cell in column.Cells.Where(cell => cell.Is is IsBlank && !FloorHeadings.SaysNone(cell.Cell)))
                    {
                        yield return (cell.Cell, kind);
                    }
                }
            }

            foreach (var row in source.RowsLeftOut.Where(row => row.Cell.Length > 0 && !FloorHeadings.SaysNone(row.Cell)))
            {
                var read = source.Columns.Where(column => NameFolding.Fold(column.Heading) == NameFolding.Fold(row.Heading)).Select(column => column.What).OfType<KindTarget>().Select(target => target.Kind);
                read = read.Concat(source.Columns.SelectMany(column => column.Cells).Where(cell => cell.Where is { } where && NameFolding.Fold(where.Heading) == NameFolding.Fold(row.Heading) && NameFolding.Fold(where.Cell) == NameFolding.Fold(row.Cell))
                    .Select(cell => cell.Is).OfType<IsKind>().Select(said => said.Kind));
                if ((read.FirstOrDefault(FloorHeadings.Asks) ?? FloorHeadings.MayBe(row.Heading, herd.Vocabulary)) is { } kind)
                {
                    yield return (row.Cell, kind);
                }
            }
        }
    }
}
