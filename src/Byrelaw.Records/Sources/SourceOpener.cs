using System.Security.Cryptography;
using Byrelaw.Language.Canonical;
using Byrelaw.Records.Ade;

namespace Byrelaw.Records.Sources;

/// <summary>Opens the sources that a farm names, in their order, and says what is wrong with each as a whole.</summary>
/// <param name="read">Gives the bytes of a file by the name that the farm gives it; null where there is none.</param>
/// <param name="show">Names a file in messages.</param>
/// <param name="list">The files in a folder that a source names; null where it names a file, or nothing is there.</param>
/// <param name="keeping">What the farm says of its records.</param>
/// <param name="vocabulary">The words.</param>
internal sealed class SourceOpener(Func<string, byte[]?> read, Func<string, string> show, Func<string, IReadOnlyList<string>?>? list, RecordKeeping keeping, Vocabulary vocabulary) : IDisposable
{
    // No short year lies after it.
    private readonly LocalDate? _today = keeping.Today ?? keeping.UpTo;
    private readonly IncrementalHash _digest = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
    private readonly List<Diagnostic> _problems = [];
    private readonly List<OpenedSource> _sources = [];

    /// <summary>What is wrong.</summary>
    public IReadOnlyList<Diagnostic> Problems => _problems;

    /// <summary>All of them.</summary>
    public IReadOnlyList<OpenedSource> Sources => _sources;

    /// <summary>The digest over their bytes, and over the text of their lines.</summary>
    public byte[] Hash => _digest.GetCurrentHash();

    /// <summary>Opens one.</summary>
    public void Open(RecordSource source)
    {
        _digest.AppendData(Encoding.UTF8.GetBytes(SourceLinesText.Of(source)));
        var shown = show(source.File);
        if (source.IsBroken)
        {
            Add(source, shown, null);
        }
        else if (source.IsAde)
        {
            OpenAde(source, list?.Invoke(source.File));
        }
        else if (read(source.File) is { } bytes)
        {
            _digest.AppendData(bytes);
            Add(source, shown, Table(shown, bytes, source));
        }
        else
        {
            _problems.Add(SourceFileProblems.NotThere(shown));
            Add(source, shown, null);
        }
    }

    private void Add(RecordSource source, string shown, SourceTable? table)
    {
        var headings = table is null ? null : SourceHeadings.Of(source, table, vocabulary, keeping, _problems);
        _sources.Add(new OpenedSource(source, shown, headings is { CanBeRead: true } ? new TranslatedSource(_sources.Count, source, table!, _today) : null) { WithoutColumn = headings?.Missing ?? [], HeadingsNotRead = headings?.NotRead ?? [], HeadingsThatTell = headings?.Telling ?? [] });
    }

    /// <summary>Opens the messages of the exchange: those in a file, or in all files of a folder.</summary>
    private void OpenAde(RecordSource source, IReadOnlyList<string>? files)
    {
        var messages = new List<(string Shown, IReadOnlyList<AdeResource> Resources)>();
        var pages = new List<(string Shown, int Number, int Of)>();
        var isTold = source.Rows == SourceRows.Events;
        foreach (var file in files ?? [source.File])
        {
            var bytes = read(file);
            _digest.AppendData(bytes ?? []);
            if (bytes is not null && AdeFile.Read(file, bytes, out var page) is { } resources)
            {
                pages.Add((show(file), page.Number, page.Of));
                messages.Add((show(file), resources));
                continue;
            }

            _problems.AddRange(!isTold ? [] : [bytes is null ? SourceFileProblems.NotThere(show(file)) : SourceFileProblems.NotMessages(show(file))]);
            Add(source, show(file), null);
        }

        if (files is { Count: 0 })
        {
            _problems.AddRange(!isTold ? [] : [SourceFileProblems.NotThere(show(source.File) + "/*.json")]);
            Add(source, show(source.File), null);
        }

        if (LackingPages(pages) is { } lacking)
        {
            _problems.AddRange(!isTold ? [] : [SourceFileProblems.LacksPages(lacking.Shown, lacking.Number, lacking.Of)]);
            Add(source, lacking.Shown, null);
        }

        foreach (var table in new AdeTables(messages, source).Of(source.Rows))
        {
            Add(source, table.Shown, table);
        }
    }

    /// <summary>A page of a collection whose other pages are not all there; null for none. Collections of as many pages are told apart by nothing: each page must be there as often as every other.</summary>
    private static (string Shown, int Number, int Of)? LackingPages(IEnumerable<(string Shown, int Number, int Of)> pages)
    {
        foreach (var alike in pages.Where(page => page.Of > 1).GroupBy(page => page.Of))
        {
            var often = alike.Count(page => page.Number == 1);
            if (often == 0 || alike.Count() != (long)often * alike.Key || alike.GroupBy(page => page.Number).Any(page => page.Key < 1 || page.Key > alike.Key || page.Count() != often))
            {
                return alike.First();
            }
        }

        return null;
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

        if (SourceText.Of(bytes, source.LettersIn, SourceReader.MostBytes, out var isTooLarge) is not { } text)
        {
            _problems.Add(isTooLarge ? SourceFileProblems.TooLarge(shown, "unpacked it is larger than 1 GB") : SourceFileProblems.NotText(shown, source.LettersIn));
            return null;
        }

        if (TextTable.Read(shown, text, source, out var exceeded) is not { } table)
        {
            _problems.Add(exceeded is null ? SourceFileProblems.NoHeadings(shown, source.HeadingRows.Last) : SourceFileProblems.TooLarge(shown, exceeded));
            return null;
        }

        return table;
    }

    /// <inheritdoc/>
    public void Dispose() => _digest.Dispose();
}
