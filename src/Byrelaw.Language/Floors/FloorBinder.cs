namespace Byrelaw.Language.Floors;

/// <summary>Binds the floor to a rulebook's words. It reads its own text with its own names, so that no name of a file gets in between.</summary>
internal static class FloorBinder
{
    /// <summary>The floor's rules, and all defines with those of the floor after the rulebook's own; no rules where a word is missing.</summary>
    public static (ImmutableArray<Rule> Rules, List<DefineEntry> Defines) Bind(Namespace names, IEnumerable<Kind> kinds, List<DefineEntry> defines)
    {
        if (FloorWords.Find(names) is not { } words)
        {
            return ([], defines);
        }

        var others = OtherTests.Of(kinds).ToList();
        var transfers = OtherTransfers.Of(kinds).ToList();
        var source = new SourceFile(FloorText.Path, FloorText.Of(words.Any(word => word.Name == "abortion"), others, transfers)) { IsOfTheProgram = true };
        var file = new RuleFile(source) { Lines = LineSplitter.Split(Lexer.Lex(source)) };
        var own = new Namespace(names.Filtered);
        var phrases = new PhraseBook();
        foreach (var (name, symbol) in words.Concat(others.Select(other => (other.Test.Name, names.Find(other.Test.Name)!))).Concat(transfers.Select(kind => (kind.Name, names.Find(kind.Name)!))))
        {
            phrases.Learn(name);
            own.Declare(name, default, symbol);
        }

        foreach (var line in file.Lines)
        {
            phrases.Learn(line);
        }

        file.Blocks = BlockReader.Read(file.Lines, phrases, file.Problems);
        var all = DefineBinder.Bind(DefineBinder.Declare([file], own), own, defines);
        var rules = new RuleBinder(own, all);
        rules.Bind(file, null);
        if (file.Problems.Count > 0)
        {
            // A floor with a hole in it must not be stood on in silence.
            throw new InvalidOperationException($"the floor's own text is wrong: {file.Problems[0].File}:{file.Problems[0].Line} {file.Problems[0].Message}");
        }

        return ([.. rules.Entries.Select(entry => entry.Rule! with { IsOfTheFloor = true })], all);
    }
}
