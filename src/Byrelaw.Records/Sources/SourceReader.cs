using System.Security.Cryptography;
using Byrelaw.Language.Canonical;
using Byrelaw.Records.Ade;

namespace Byrelaw.Records.Sources;

/// <summary>Reads the sources that a farm names into the landed form: whole, or herd by herd.</summary>
internal sealed class SourceReader
{
    /// <summary>The most bytes that one source may hold once it is unpacked.</summary>
    public const long MostBytes = 2L << 30;

    private readonly Vocabulary _vocabulary;
    private readonly RecordKeeping _keeping;
    private readonly List<Diagnostic> _problems = [];
    private readonly List<TranslatedSource?> _sources = [];
    private readonly List<RecordSource> _of = [];
    private readonly List<string> _shown = [];
    private HerdShares? _shares;
    private byte[] _hash = [];

    private SourceReader(Vocabulary vocabulary, RecordKeeping keeping)
    {
        _vocabulary = vocabulary;
        _keeping = keeping;
    }

    /// <summary>Reads all sources as one herd.</summary>
    /// <param name="read">Gives the bytes of a file by the name that the farm gives it; null where there is none.</param>
    /// <param name="show">Names a file in messages.</param>
    /// <param name="vocabulary">The words.</param>
    /// <param name="keeping">What the farm says of its records.</param>
    /// <param name="list">The files in a folder that a source names; null where it names a file, or nothing is there.</param>
    public static RecordInput Read(Func<string, byte[]?> read, Func<string, string> show, Vocabulary vocabulary, RecordKeeping keeping, Func<string, IReadOnlyList<string>?>? list = null) =>
        Open(read, show, vocabulary, keeping, list).Whole();

    /// <summary>Opens all sources; what is read from them is told later.</summary>
    /// <inheritdoc cref="Read"/>
    public static SourceReader Open(Func<string, byte[]?> read, Func<string, string> show, Vocabulary vocabulary, RecordKeeping keeping, Func<string, IReadOnlyList<string>?>? list = null)
    {
        var reader = new SourceReader(vocabulary, keeping);
        using var digest = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var source in keeping.Sources)
        {
            if (source.IsAde && !source.IsBroken)
            {
                reader.OpenAde(source, read, show, list?.Invoke(source.File), digest);
            }
            else
            {
                reader.Add(source, show(source.File), shown => reader.Open(source, shown, read, digest));
            }
        }

        reader._hash = digest.GetCurrentHash();
        return reader;
    }

    /// <summary>The herds that rows say they are of, in order; none where no source says which herd a row is of.</summary>
    public ImmutableArray<string> Herds => Shares.Herds;

    /// <summary>How many animals stand in no herd, though there are herds.</summary>
    public int WithoutHerd => Shares.WithoutHerd;

    private HerdShares Shares => _shares ??= HerdShares.Of([.. _sources.OfType<TranslatedSource>()], Found());

    /// <summary>All rows.</summary>
    public RecordInput Whole() => Translated(_sources, Convert.ToHexStringLower(_hash));

    /// <summary>The rows that count in one herd.</summary>
    public RecordInput OfHerd(string herd) => Translated(
        [.. _sources.Select(source => source?.OfHerd(herd, Shares.RowsOf(source, herd)))],
        Convert.ToHexStringLower(SHA256.HashData([.. _hash, .. Encoding.UTF8.GetBytes(herd)])));

    /// <summary>Which animals go by which tags, in all herds together.</summary>
    private FoundAnimals Found()
    {
        var found = new FoundAnimals();
        if (_sources.Exists(source => source?.Column("animal")?.FoundBy is not null))
        {
            foreach (var translator in Of(_sources, new AnimalRows(_vocabulary), new EventRows(_vocabulary), []))
            {
                translator.TranslateAnimals(found);
            }
        }

        return found;
    }

    private RecordInput Translated(List<TranslatedSource?> sources, string fingerprint)
    {
        var (animals, events, found, last) = (new AnimalRows(_vocabulary), new EventRows(_vocabulary), new FoundAnimals(), new List<HerLast>());
        AnimalTranslator[] translators = [.. Of(sources, animals, events, last)];
        Array.ForEach(translators, translator => translator.TranslateAnimals(found));
        Array.ForEach(translators, translator => translator.TranslateEvents(found));
        for (var place = 0; place < sources.Count; place++)
        {
            if (sources[place] is not { } source)
            {
                Suspend(place, events);
            }
            else if (source.Source.Rows == SourceRows.Events)
            {
                new EventTranslator(source, _vocabulary, found, events).Translate();
            }
        }

        var rows = animals.ToRows();
        return new RecordInput(RecordFile.Of(Shown(SourceRows.Animals), rows.ToBytes()), RecordFile.Of(Shown(SourceRows.Events), events.Rows.ToBytes()))
        {
            Places = new SourcePlaces(sources, _shown, rows, events.Rows, _vocabulary),
            Last = [.. last],
            Problems = [.. _problems],
            Fingerprint = $"sha256:{fingerprint}",
        };
    }

    /// <summary>The file of sources with such rows where there is one; else the records as a whole.</summary>
    private string Shown(SourceRows rows) =>
        _of.Select((source, place) => (source.Rows, File: _shown[place])).Where(source => source.Rows == rows).ToList() is [var only] ? only.File : "the records";

    private static IEnumerable<AnimalTranslator> Of(IEnumerable<TranslatedSource?> sources, AnimalRows animals, EventRows events, List<HerLast> last) =>
        sources.OfType<TranslatedSource>().Where(source => source.Source.Rows == SourceRows.Animals).Select(source => new AnimalTranslator(source, animals, events, last));

    private void Add(RecordSource source, string shown, Func<string, TranslatedSource?> open)
    {
        _of.Add(source);
        _shown.Add(shown);
        _sources.Add(open(shown));
    }

    /// <summary>Opens the messages of the exchange: those in a file, or in all files of a folder.</summary>
    private void OpenAde(RecordSource source, Func<string, byte[]?> read, Func<string, string> show, IReadOnlyList<string>? files, IncrementalHash digest)
    {
        digest.AppendData(Encoding.UTF8.GetBytes(SourceLinesText.Of(source)));
        var messages = new List<(string Shown, IReadOnlyList<AdeResource> Resources)>();
        var isTold = source.Rows == SourceRows.Events;
        foreach (var file in files ?? [source.File])
        {
            var bytes = read(file);
            digest.AppendData(bytes ?? []);
            if (bytes is not null && AdeFile.Read(file, bytes) is { } resources)
            {
                messages.Add((show(file), resources));
                continue;
            }

            _problems.AddRange(!isTold ? [] : [bytes is null ? SourceFileProblems.NotThere(show(file)) : SourceFileProblems.NotMessages(show(file))]);
            Add(source, show(file), _ => null);
        }

        if (files is { Count: 0 })
        {
            _problems.AddRange(!isTold ? [] : [SourceFileProblems.NotThere(show(source.File) + "/*.json")]);
            Add(source, show(source.File), _ => null);
        }

        foreach (var table in new AdeTables(messages, source).Of(source.Rows))
        {
            Add(source, table.Shown, _ => HasColumns(source, table) ? new TranslatedSource(_sources.Count, source, table, _keeping.Today ?? _keeping.UpTo) : null);
        }
    }

    private TranslatedSource? Open(RecordSource source, string shown, Func<string, byte[]?> read, IncrementalHash digest)
    {
        digest.AppendData(Encoding.UTF8.GetBytes(SourceLinesText.Of(source)));
        if (source.IsBroken)
        {
            return null;
        }

        if (read(source.File) is not { } bytes)
        {
            _problems.Add(SourceFileProblems.NotThere(shown));
            return null;
        }

        digest.AppendData(bytes);
        if (Table(shown, bytes, source) is not { } table)
        {
            return null;
        }

        return HasColumns(source, table) ? new TranslatedSource(_sources.Count, source, table, _keeping.Today ?? _keeping.UpTo) : null;
    }

    /// <summary>What stands in a file; null, and a problem, where nothing can be read.</summary>
    private SourceTable? Table(string shown, byte[] bytes, RecordSource source)
    {
        if (WorkbookTable.Is(bytes))
        {
            var sheet = WorkbookTable.Read(shown, bytes, source, WorkbookBounds.Usual, out var problem);
            _problems.AddRange(problem is null ? [] : [problem]);
            return sheet;
        }

        if (source.Sheet is not null)
        {
            _problems.Add(WorkbookProblems.NoSheets(shown));
            return null;
        }

        if (SourceText.Of(bytes, source.LettersIn, MostBytes) is not { } text)
        {
            _problems.Add(SourceFileProblems.NotText(shown, source.LettersIn));
            return null;
        }

        if (TextTable.Read(shown, text, source) is not { } table)
        {
            _problems.Add(SourceFileProblems.NoHeadings(shown, source.HeadingRows.Last));
            return null;
        }

        return table;
    }

    /// <summary>Whether the columns are there without which no row can be read; tells of every column that is not there, and of those that nobody reads.</summary>
    private bool HasColumns(RecordSource source, SourceTable table)
    {
        var isWhole = true;
        foreach (var column in source.Columns)
        {
            if (table.Find(column.Heading) < 0)
            {
                _problems.Add(SourceFileProblems.NoColumn(table, column.Heading, NearestName.OnlyOne(column.Heading, table.Headings)));
                isWhole = false;
            }
        }

        string[] read =
        [
            .. source.Columns.SelectMany(column => column.Cells.SelectMany(cell => cell.Parts.Select(part => part.Heading).Append(cell.Where?.Heading)).Append(column.DatedIn).Prepend(column.Heading)).OfType<string>(),
            .. source.RowsLeftOut.Select(row => row.Heading),
        ];

        // What nobody need look at need not be there.
        var known = read.Concat(source.ColumnsLeftOut).Select(NameFolding.Fold).ToHashSet(StringComparer.Ordinal);
        foreach (var heading in read.Where(heading => table.Find(heading) < 0).Except(source.Columns.Select(column => column.Heading)).Distinct())
        {
            _problems.Add(SourceFileProblems.NoColumn(table, heading, NearestName.OnlyOne(heading, table.Headings)));
            isWhole = false;
        }

        string[] notRead = [.. table.Headings.Where(heading => heading.Length > 0 && !known.Contains(NameFolding.Fold(heading)))];
        if (isWhole && notRead.Length > 0 && !source.IsAde)
        {
            _problems.Add(SourceFileProblems.NotRead(table, notRead));
        }

        return isWhole;
    }

    /// <summary>A source that is not there might have said anything of the kinds that it can give.</summary>
    private void Suspend(int place, EventRows events)
    {
        var source = _of[place];
        foreach (var kind in SourceKinds.Of(source, _keeping.Sources, _vocabulary.Kinds))
        {
            events.AddUnreadable(new RowPlace(place, 0), kind?.Name);
        }
    }
}
