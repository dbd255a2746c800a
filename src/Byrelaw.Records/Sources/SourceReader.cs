using System.Security.Cryptography;
using Byrelaw.Language.Canonical;

namespace Byrelaw.Records.Sources;

/// <summary>Reads the sources that a farm names into the landed form.</summary>
internal sealed class SourceReader
{
    /// <summary>The most bytes that one source may hold once it is unpacked.</summary>
    public const long MostBytes = 2L << 30;

    private readonly Vocabulary _vocabulary;
    private readonly RecordKeeping _keeping;
    private readonly List<Diagnostic> _problems = [];
    private readonly List<TranslatedSource?> _sources = [];
    private readonly List<string> _shown = [];
    private readonly IncrementalHash _digest = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);

    private SourceReader(Vocabulary vocabulary, RecordKeeping keeping)
    {
        _vocabulary = vocabulary;
        _keeping = keeping;
    }

    /// <summary>Reads all sources.</summary>
    /// <param name="read">Gives the bytes of a file by the name that the farm gives it; null where there is none.</param>
    /// <param name="show">Names a file in messages.</param>
    /// <param name="vocabulary">The words.</param>
    /// <param name="keeping">What the farm says of its records.</param>
    public static RecordInput Read(Func<string, byte[]?> read, Func<string, string> show, Vocabulary vocabulary, RecordKeeping keeping)
    {
        var reader = new SourceReader(vocabulary, keeping);
        using (reader._digest)
        {
            return reader.Read(read, show);
        }
    }

    private RecordInput Read(Func<string, byte[]?> read, Func<string, string> show)
    {
        foreach (var source in _keeping.Sources)
        {
            _shown.Add(show(source.File));
            _sources.Add(Open(source, read));
        }

        var (animals, events, found) = (new AnimalRows(_vocabulary), new EventRows(_vocabulary), new FoundAnimals());
        foreach (var translator in Of(SourceRows.Animals, animals, events))
        {
            translator.TranslateAnimals(found);
        }

        foreach (var translator in Of(SourceRows.Animals, animals, events))
        {
            translator.TranslateEvents(found);
        }

        for (var place = 0; place < _sources.Count; place++)
        {
            if (_sources[place] is not { } source)
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
            Places = new SourcePlaces(_sources, _shown, rows, events.Rows, _vocabulary),
            Problems = [.. _problems],
            Fingerprint = "sha256:" + Convert.ToHexStringLower(_digest.GetCurrentHash()),
        };
    }

    /// <summary>The file of sources with such rows where there is one; else the records as a whole.</summary>
    private string Shown(SourceRows rows) =>
        _keeping.Sources.Select((source, place) => (source.Rows, File: _shown[place])).Where(source => source.Rows == rows).ToList() is [var only] ? only.File : "the records";

    private IEnumerable<AnimalTranslator> Of(SourceRows rows, AnimalRows animals, EventRows events) =>
        _sources.OfType<TranslatedSource>().Where(source => source.Source.Rows == rows).Select(source => new AnimalTranslator(source, animals, events));

    private TranslatedSource? Open(RecordSource source, Func<string, byte[]?> read)
    {
        _digest.AppendData(Encoding.UTF8.GetBytes(SourceLinesText.Of(source)));
        var shown = _shown[^1];
        if (source.IsBroken)
        {
            return null;
        }

        if (read(source.File) is not { } bytes)
        {
            _problems.Add(SourceFileProblems.NotThere(shown));
            return null;
        }

        _digest.AppendData(bytes);
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

        return HasColumns(source, table) ? new TranslatedSource(_sources.Count, source, table, _keeping.Today ?? _keeping.UpTo) : null;
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
            .. source.RowsLeftOut.Select(row => row.Heading), .. source.ColumnsLeftOut,
        ];
        var known = read.Select(NameFolding.Fold).ToHashSet(StringComparer.Ordinal);
        foreach (var heading in read.Where(heading => table.Find(heading) < 0).Except(source.Columns.Select(column => column.Heading)).Distinct())
        {
            _problems.Add(SourceFileProblems.NoColumn(table, heading, NearestName.OnlyOne(heading, table.Headings)));
            isWhole = false;
        }

        string[] notRead = [.. table.Headings.Where(heading => heading.Length > 0 && !known.Contains(NameFolding.Fold(heading)))];
        if (isWhole && notRead.Length > 0)
        {
            _problems.Add(SourceFileProblems.NotRead(table, notRead));
        }

        return isWhole;
    }

    /// <summary>A source that is not there might have said anything of the kinds that it can give.</summary>
    private void Suspend(int place, EventRows events)
    {
        var source = _keeping.Sources[place];
        foreach (var kind in SourceKinds.Of(source, _keeping.Sources, _vocabulary.Kinds))
        {
            events.AddUnreadable(new RowPlace(place, 0), kind?.Name);
        }
    }
}
