using TextMateSharp.Grammars;
using TextMateSharp.Internal.Grammars.Reader;
using TextMateSharp.Internal.Types;
using TextMateSharp.Registry;
using TextMateSharp.Themes;

namespace Byrelaw.LanguageServer.Tests.Colours;

/// <summary>Colours a text with the grammar in <c>editor-support</c>, by an engine that editors use.</summary>
internal sealed class TextMateColours : IRegistryOptions
{
    public const string GrammarFile = "editor-support/byrelaw.tmLanguage.json";

    /// <summary>The grammar is read, and its patterns made, once: both take far longer than colouring a page.</summary>
    public static readonly TextMateColours Once = new();

    private readonly IGrammar _grammar;

    private TextMateColours() => _grammar = new Registry(this).LoadGrammar("source.byre");

    /// <summary>The class of every character of a line, and what the next line goes on from.</summary>
    public TokenClass?[] Line(string line, ref IStateStack? state)
    {
        var result = _grammar.TokenizeLine(line, state, TimeSpan.MaxValue);
        state = result.RuleStack;
        var classes = new TokenClass?[line.Length];
        foreach (var token in result.Tokens)
        {
            Array.Fill(classes, Class(token.Scopes), Math.Min(token.StartIndex, line.Length), Math.Max(0, Math.Min(token.EndIndex, line.Length) - Math.Min(token.StartIndex, line.Length)));
        }

        return classes;
    }

    public IRawGrammar GetGrammar(string scopeName)
    {
        using var reader = new StreamReader(Repository.At(GrammarFile));
        return GrammarReader.ReadGrammarSync(reader);
    }

    public ICollection<string>? GetInjections(string scopeName) => null;

    public IRawTheme GetTheme(string scopeName) => throw new NotSupportedException();

    public IRawTheme GetDefaultTheme() => new NoTheme();

    private static TokenClass Class(List<string> scopes)
    {
        var all = string.Join(' ', scopes);
        return all switch
        {
            _ when all.Contains("comment.", StringComparison.Ordinal) => TokenClass.Comment,
            _ when all.Contains("entity.name.function", StringComparison.Ordinal) => TokenClass.RuleName,
            _ when all.Contains("string.", StringComparison.Ordinal) => TokenClass.Text,
            _ when all.Contains("invalid.", StringComparison.Ordinal) => TokenClass.Wrong,
            _ when all.Contains("keyword.other.unit", StringComparison.Ordinal) => TokenClass.Unit,
            _ when all.Contains("keyword.", StringComparison.Ordinal) => TokenClass.Keyword,
            _ when all.Contains("constant.other.date", StringComparison.Ordinal) => TokenClass.Date,
            _ when all.Contains("constant.numeric", StringComparison.Ordinal) => TokenClass.Number,
            _ when all.Contains("punctuation.", StringComparison.Ordinal) => TokenClass.Sign,
            _ => TokenClass.Name,
        };
    }

    private sealed class NoTheme : IRawTheme
    {
        public string GetName() => "none";

        public string? GetInclude() => null;

        public ICollection<IRawThemeSetting> GetSettings() => [];

        public ICollection<IRawThemeSetting> GetTokenColors() => [];

        public ICollection<KeyValuePair<string, object>> GetGuiColors() => [];
    }
}
