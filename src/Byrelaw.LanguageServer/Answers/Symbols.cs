using Byrelaw.Workshop.Editing.Outlines;

namespace Byrelaw.LanguageServer.Answers;

/// <summary>A document's blocks, the rules of a list under the line that starts it.</summary>
internal static class Symbols
{
    // From SymbolKind of LSP 3.17; the names there are those of programming, these come nearest.
    private const int Namespace = 3;
    private const int Method = 6;
    private const int Property = 7;
    private const int Function = 12;
    private const int Event = 24;

    /// <summary>The blocks.</summary>
    public static List<DocumentSymbol> Of(Workspace workspace, DocumentName document)
    {
        var symbols = new List<DocumentSymbol>();
        if (workspace.Document(document) is not var (reading, file))
        {
            return symbols;
        }

        DocumentSymbol? list = null;
        foreach (var item in reading.View.OutlineOf(file))
        {
            var symbol = Of(item);
            if (item.Head is "rule" or "safety" or "prefer" && list is not null)
            {
                list.Children!.Add(symbol);
                symbols[^1] = list = list with { Range = new Protocol.Range(list.Range.Start, symbol.Range.End) };
                continue;
            }

            list = item.Head == "rules" ? symbol : null;
            symbols.Add(symbol);
        }

        return symbols;
    }

    private static DocumentSymbol Of(OutlineItem item) => new(
        item.Name.Length > 0 ? item.Name : item.Head, item.Head, Kind(item.Head), TextLines.Range(item.Span), TextLines.Range(item.NameSpan),
        item.Head == "rules" ? [] : null);

    private static int Kind(string head) => head switch
    {
        "rules" or "programme" or "records" or "use" => Namespace,
        "rule" or "safety" or "prefer" or "change" or "drop" or "waive" => Method,
        "define" or "spell" => Function,
        "event" or "test" or "measure" => Event,
        _ => Property,
    };
}
