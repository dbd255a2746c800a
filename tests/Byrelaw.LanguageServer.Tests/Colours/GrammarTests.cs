using Byrelaw.Language.Lexing;
using Byrelaw.Language.Units;

namespace Byrelaw.LanguageServer.Tests.Colours;

public sealed class GrammarTests
{
    [Fact]
    public void Colours_agree_with_what_the_language_says_of_every_word_of_the_rule_files()
    {
        var different = new List<string>();
        foreach (var path in new[] { "rulesets", "examples" }.SelectMany(folder => Directory.EnumerateFiles(Repository.At(folder), "*.byre", SearchOption.AllDirectories)).Order(StringComparer.Ordinal))
        {
            var view = new RulebookView(RulebookReader.Read(path, new EditorFiles())!);
            different.AddRange(Differences.In(view, view.Files[0]).Select(difference => $"{Path.GetRelativePath(Repository.Root, path)}:{difference}"));
        }

        different.ShouldBeEmpty();
    }

    [Fact]
    public void Colours_agree_with_what_the_language_says_of_every_word_of_the_pages()
    {
        var (different, count) = (new List<string>(), 0);
        foreach (var page in Directory.EnumerateFiles(Repository.At("docs"), "*.md", SearchOption.AllDirectories).Append(Repository.At("README.md")).Order(StringComparer.Ordinal))
        {
            foreach (var (line, view) in PageSnippets.Of(File.ReadAllText(page)))
            {
                count++;
                different.AddRange(Differences.In(view, view.Files[0]).Select(difference => $"{Path.GetFileName(page)}, snippet at {line}, {difference}"));
            }
        }

        count.ShouldBeGreaterThan(25);
        different.ShouldBeEmpty();
    }

    [Fact]
    public void Every_word_that_ends_a_name_is_coloured_as_the_languages_own()
    {
        var colours = TextMateColours.Once;
        foreach (var word in LanguageWords.With(WordRole.EndsName))
        {
            TextMateSharp.Grammars.IStateStack? state = null;
            colours.Line($"  needs it {word}", ref state)[^word.Length..].ShouldAllBe(one => one == TokenClass.Keyword, word);
        }
    }

    [Fact]
    public void Every_unit_is_coloured_as_one()
    {
        var colours = TextMateColours.Once;
        foreach (var unit in UnitTable.All)
        {
            TextMateSharp.Grammars.IStateStack? state = null;
            var line = $"  needs latest it ever at least 5 {unit.Symbol}";
            colours.Line(line, ref state)[^unit.Symbol.Length..].ShouldAllBe(one => one == TokenClass.Unit, unit.Symbol);
        }
    }
}
