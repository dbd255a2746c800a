namespace Byrelaw.Language.Floors;

/// <summary>Binds the floor to a rulebook's words. It reads its own text with its own names, so that no name of a file gets in between.</summary>
internal static class FloorBinder
{
    /// <summary>The floor's rules, and all defines with those of the floor after the rulebook's own; no rules where a word is missing.</summary>
    public static (ImmutableArray<Rule> Rules, List<DefineEntry> Defines) Bind(Namespace names, List<DefineEntry> defines)
    {
        if (FloorWords.Find(names) is not { } words)
        {
            return ([], defines);
        }

        var source = new SourceFile(FloorText.Path, FloorText.Of(words.Any(word => word.Name == "abortion"))) { IsOfTheProgram = true };
        var file = new RuleFile(source) { Lines = LineSplitter.Split(Lexer.Lex(source)) };
        var own = new Namespace(names.Filtered);
        var phrases = new PhraseBook();
        foreach (var (name, symbol) in words)
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
        return ([.. rules.Entries.Select(entry => entry.Rule! with { IsOfTheFloor = true })], all);
    }
}
