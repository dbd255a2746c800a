using System.Collections;
using System.Reflection;
using Byrelaw.Language.PhraseBooks;
using Byrelaw.Language.Syntax;

namespace Byrelaw.Language.Tests.Syntax;

public sealed class SpanTests
{
    [Fact]
    public void No_node_has_an_empty_span_and_each_lies_in_its_parent()
    {
        var seen = new HashSet<Type>();
        foreach (var line in Lines("use \"words.byre\"\nuse base recipients edition 1\n" + Rules.Words + Snippets.Everything + "\n" + Plans.PlanSnippets.Everything + "\n" + Plans.PlanSnippets.OtherForms + "\n" + Examples.ExampleReadingTests.Everything + "\n" + Sources.SourceSnippets.Everything))
        {
            Walk(line, line, seen);
        }

        var all = typeof(SyntaxNode).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(SyntaxNode)) && !type.IsAbstract);
        all.Except(seen).Select(type => type.Name).ShouldBeEmpty();
    }

    private static IEnumerable<SyntaxNode> Lines(string text)
    {
        var lines = LineSplitter.Split(Tokens.Lex(text));
        var phrases = new PhraseBook();
        lines.ForEach(phrases.Learn);
        var problems = new List<Diagnostic>();
        var blocks = BlockReader.Read(lines, phrases, problems);
        DiagnosticText.Of(problems).ShouldBe("");
        return blocks.SelectMany(block => block.Lines.Cast<SyntaxNode>().Prepend(block.Head!));
    }

    private static void Walk(SyntaxNode node, SyntaxNode parent, HashSet<Type> seen)
    {
        seen.Add(node.GetType());
        node.Span.Length.ShouldBeGreaterThan(0, $"{node}");
        (node.Span.Start >= parent.Span.Start && node.Span.End <= parent.Span.End).ShouldBeTrue($"{node.Span.Text} lies outside {parent.Span.Text}");
        foreach (var property in node.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            var value = property.GetIndexParameters().Length == 0 && property.Name != "EqualityContract" ? property.GetValue(node) : null;
            var children = value is SyntaxNode child ? [child] : value is IEnumerable many and not string ? many.OfType<SyntaxNode>() : [];
            foreach (var inner in children)
            {
                Walk(inner, node, seen);
            }
        }
    }
}
