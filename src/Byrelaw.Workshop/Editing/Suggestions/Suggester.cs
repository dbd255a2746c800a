namespace Byrelaw.Workshop.Editing.Suggestions;

/// <summary>Says what may stand at a place: the grammar tells what it expects there, and the rulebook's names fill it.</summary>
internal sealed class Suggester
{
    private static readonly string[] Groups = ["females", "cows", "heifers"];

    private readonly Place _place;
    private readonly Namespace _names;
    private readonly Following _following;
    private readonly Following _startingABlock;
    private readonly KnownTexts _texts;
    private readonly List<Suggestion> _suggestions = [];

    private Suggester(Place place, ReadParts parts, KnownTexts texts)
    {
        _place = place;
        _names = parts.Names;
        _texts = texts;
        _following = new Following(place.Head, parts.Phrases, place.Typed);
        _startingABlock = new Following(null, parts.Phrases, place.Typed);
    }

    /// <summary>Everything that may stand there, the likeliest first.</summary>
    public static IReadOnlyList<Suggestion> At(Place place, ReadParts parts, KnownTexts texts)
    {
        var suggester = new Suggester(place, parts, texts);
        if (place.Tokens.Length == 0)
        {
            suggester.LineStart();
        }
        else if (suggester._following.After(place.Tokens) is { } line)
        {
            suggester.Line(line);
        }

        return [.. suggester._suggestions.DistinctBy(suggestion => suggestion.Text).OrderBy(suggestion => suggestion.Rank)];
    }

    private void LineStart()
    {
        var (inBlock, heads) = LineStarts.Words(_place.Head);
        foreach (var wanted in LineStarts.OfTheirOwn(_place.Head))
        {
            Add(wanted, null);
        }

        Words(inBlock, _following, _place.IsIndented ? 0 : 2);
        Words(heads, _startingABlock, _place.IsIndented ? 3 : 0);

        void Words(IEnumerable<string> words, Following following, int rank)
        {
            foreach (var phrase in words.SelectMany(word => following.Phrases([], word)).Order(StringComparer.Ordinal))
            {
                Add(phrase, null, "starts a line", _place.Typed, rank);
            }
        }
    }

    private void Line(NotedLine line)
    {
        var subject = IsCondition(line) ? ConditionSubject.Of(line, _names) : null;
        foreach (var wanted in line.Following)
        {
            if (wanted.Kind != LeafKind.Word || !IsCondition(line) || line.Line.Tokens[^1].Is("is") || ConditionSubject.Takes(subject, wanted.Label, Counts(line)))
            {
                Add(wanted, line);
            }
        }
    }

    /// <summary>Whether a demand on a number stands before the condition's name.</summary>
    private static bool Counts(NotedLine line)
    {
        var tokens = line.Line.Tokens;
        var first = tokens[0].Is("needs") || line.Taken[0]?.Kind == LeafKind.Bullet ? 1 : 0;
        return first < tokens.Length && (tokens[first].Is("no") || LanguageWords.Has(tokens[first].Folded, WordRole.StartsDemand));
    }

    private static bool IsCondition(NotedLine line) =>
        line.Line.WordAt(0) == "needs" || line.Taken[0]?.Kind is LeafKind.Bullet or LeafKind.Name || Counts(line)
        || (line.Line.WordAt(0) is "change" ? line.Line.WordAt(1) == "in" : line.Line.WordAt(0) is "not" || LanguageWords.Has(line.Line.WordAt(0), WordRole.Chooses));

    private void Add(Wanted wanted, NotedLine? line)
    {
        switch (wanted.Kind)
        {
            case LeafKind.Word when !_place.IsInText:
                foreach (var phrase in _following.Phrases(_place.Tokens, wanted.Label))
                {
                    Add(phrase, null, "a word of the language", _place.Typed, 1);
                }

                break;
            case LeafKind.TimeUnit when !_place.IsInText:
                TimeUnits();
                break;
            case LeafKind.Unit when !_place.IsInText && line is not null:
                foreach (var unit in ConditionSubject.Units(ConditionSubject.Of(line, _names)))
                {
                    Add(unit, null, "a unit", _place.Typed, 0);
                }

                break;
            case LeafKind.Name when NameLabels.IsMoreOnRecord(wanted, line):
                MoreOnRecord(line!);
                break;
            case LeafKind.Name when wanted.Label is NameLabels.Detail or NameLabels.DetailValue:
                foreach (var (text, detail) in DetailSuggestions.Of(wanted, line, _names))
                {
                    Add(_place.IsInText ? NameText.Text(text) : NameText.Exact(text), NameSort.Value, detail, _place.Typed, 0);
                }

                break;
            case LeafKind.Name:
                Names(wanted, line, "", _place.Typed);
                break;
            case LeafKind.MoreOfName when !_place.IsInText:
                MoreOfName(wanted, line!);
                break;
            case LeafKind.Text:
                Texts(wanted, line);
                break;
            default:
                break;
        }
    }

    private void TimeUnits()
    {
        var isOne = _place.Tokens is [.., { Kind: TokenKind.Number, Number: 1 }];
        foreach (var unit in (string[])["day", "week", "month", "year"])
        {
            Add(isOne ? unit : unit + "s", null, "a unit of time", _place.Typed, 0);
        }
    }

    /// <summary>Names that go on as the words before do: <c>body condition</c> after <c>body</c>.</summary>
    private void MoreOfName(Wanted wanted, NotedLine line)
    {
        var start = line.Taken.Length - 1;
        while (start > 0 && line.Taken[start]?.Kind == LeafKind.MoreOfName)
        {
            start--;
        }

        var written = line.Line.Tokens[start].Span.To(line.Line.Tokens[^1].Span);
        var begun = NameFolding.Fold(written.Text) + " ";
        Names(wanted, line, begun, new SourceSpan(_place.Typed.File, written.Start, _place.Typed.End - written.Start));
    }

    /// <summary>After the first words of a record: more of its name; and where they are the name of a fact, what it may be.</summary>
    private void MoreOnRecord(NotedLine line)
    {
        var written = line.Line.Tokens[0].Span.To(line.Line.Tokens[^1].Span);
        if (!_place.IsInText)
        {
            Names(NameLabels.OnRecord, line, NameFolding.Fold(written.Text) + " ", new SourceSpan(_place.Typed.File, written.Start, _place.Typed.End - written.Start));
        }

        if (_names.Find(written.Text) is FactSymbol fact)
        {
            foreach (var value in SymbolThings.Words(fact))
            {
                Add(_place.IsInText ? NameText.Text(value) : NameText.Exact(value), NameSort.Value, $"of {fact.Name}", _place.Typed, 0);
            }
        }
    }

    private void Names(Wanted wanted, NotedLine? line, string begun, SourceSpan replaces)
    {
        if (NameLabels.IsList(wanted))
        {
            Lists();
            if (line?.Line.Tokens[^1].Is("from") == true)
            {
                AddNames(Groups.Select(group => (group, NameSort.BuiltIn, "a sort of animal")));
            }
        }
        else if (NameLabels.IsValue(wanted) && line is not null && ConditionSubject.Of(line, _names) is { } subject)
        {
            AddNames(SymbolThings.Words(subject).Select(word => (word, subject is FactSymbol ? NameSort.Value : NameSort.Answer, $"of {subject.Name}")));
        }
        else
        {
            AddNames(_names.All.Where(name => NameLabels.Takes(wanted, name.Symbol, line)).Select(name => (name.Spelling, SymbolThings.Sort(name.Symbol), Detail(name.Spelling, name.Symbol))));
        }

        if (wanted.Label == NameLabels.ListOrDefine)
        {
            Lists();
        }

        if (wanted.Label == NameLabels.Counted)
        {
            AddNames(
                from name in _names.All
                where name.Symbol is KindSymbol { Kind: TestKind }
                from answer in SymbolThings.Words(name.Symbol)
                select ($"{answer} {name.Spelling}", NameSort.Test, "an answer and its test"));
        }

        void Lists() => AddNames(_texts.Lists.Select(list => (list, NameSort.List, "a list")));

        void AddNames(IEnumerable<(string Name, NameSort Sort, string Detail)> names)
        {
            foreach (var (name, sort, detail) in names.Where(name => NameFolding.Fold(name.Name).StartsWith(begun, StringComparison.Ordinal)))
            {
                Add(_place.IsInText ? NameText.Text(name) : IsPhrase(name) ? name : NameText.Exact(name), sort, detail, replaces, 0);
            }
        }
    }

    /// <summary>A declared name of several words needs no quotes where its first word is free.</summary>
    private static bool IsPhrase(string name) => name.Split(' ') is [var first, _, ..] && !LanguageWords.EndName(FoldedWords.Of(first));

    private static string Detail(string spelling, Symbol symbol) =>
        NameFolding.Fold(spelling) == NameFolding.Fold(symbol.Name) ? symbol.Sort : $"{symbol.Sort}: {symbol.Name}";

    private void Texts(Wanted wanted, NotedLine? line)
    {
        var head = line?.Line.WordAt(0) ?? "";
        if (NameLabels.IsRule(wanted, head) && !NameLabels.DeclaresRule(head))
        {
            foreach (var rule in _texts.Rules)
            {
                Add(NameText.Text(rule), NameSort.Rule, "a rule", _place.Typed, 0);
            }
        }
        else if (head == "use")
        {
            foreach (var path in _texts.Paths())
            {
                Add(NameText.Text(path), null, "a rule file", _place.Typed, 0);
            }
        }
    }

    private void Add(string text, NameSort? sort, string detail, SourceSpan replaces, int rank) =>
        _suggestions.Add(new Suggestion(text, sort, detail, replaces) { Rank = rank });
}
