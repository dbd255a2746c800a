using Pidgin;
using static Pidgin.Parser;

namespace Byrelaw.Language.Grammar;

/// <summary>Lines inside rules, defines, preferences and what changes them.</summary>
internal static class RuleLines
{
    public static readonly Parser<Token, LineSyntax> AppliesTo = Map<Token, Token, NameSyntax, LineSyntax>(
        (start, name) => new AppliesToLine(name) { Span = start.Span.To(name.Span) },
        Leaf.Word("applies"), Leaf.Word("to").Then(Leaf.Name("`cows`, `heifers`, `females` or a defined name")));

    public static readonly Parser<Token, LineSyntax> Needs = Map<Token, Token, ConditionSyntax, LineSyntax>(
        (start, condition) => new NeedsLine(condition) { Span = start.Span.To(condition.Span) },
        Leaf.Word("needs"), Conditions.Condition);

    public static readonly Parser<Token, LineSyntax> Condition =
        Conditions.Condition.Select<LineSyntax>(condition => new ConditionLine(condition) { Span = condition.Span });

    public static readonly Parser<Token, LineSyntax> Bullet = Map<Token, Token, ConditionSyntax, LineSyntax>(
        (start, condition) => new BulletLine(condition) { Span = start.Span.To(condition.Span) },
        Leaf.Bullet, Conditions.Condition);

    public static readonly Parser<Token, LineSyntax> IfNotKnown = Map<Token, Token, (IfNotKnown Instead, Token Token), LineSyntax>(
        (start, instead) => new IfNotKnownLine(instead.Instead) { Span = start.Span.To(instead.Token.Span) },
        Leaf.Word("if").Before(Leaf.Word("not")).Before(Leaf.Word("known")),
        OneOf(
            Leaf.Word("ask").Select(token => (Rulebooks.IfNotKnown.Ask, token)),
            Leaf.Word("pass").Select(token => (Rulebooks.IfNotKnown.Pass, token)),
            Leaf.Word("exclude").Select(token => (Rulebooks.IfNotKnown.Exclude, token))));

    public static readonly Parser<Token, LineSyntax> OnTheDay = Map<Token, Token, Token, LineSyntax>(
        (start, end) => new OnTheDayLine { Span = start.Span.To(end.Span) },
        Leaf.Word("on"), Leaf.Word("the").Then(Leaf.Word("day")));

    public static readonly Parser<Token, LineSyntax> Because = Map<Token, Token, TextSyntax, LineSyntax>(
        (start, text) => new BecauseLine(text) { Span = start.Span.To(text.Span) }, Leaf.Word("because"), Leaf.Text("the reason in quotes"));

    public static readonly Parser<Token, LineSyntax> Source = Map<Token, Token, TextSyntax, LineSyntax>(
        (start, text) => new SourceLine(text) { Span = start.Span.To(text.Span) }, Leaf.Word("source"), Leaf.Text("where it comes from, in quotes"));

    public static readonly Parser<Token, LineSyntax> AgreedBy = Map<Token, Token, ImmutableArray<TextSyntax>, DateSyntax, LineSyntax>(
        (start, by, on) => new AgreedByLine(by, on) { Span = start.Span.To(on.Span) },
        Leaf.Word("agreed"), Leaf.Word("by").Then(Lists.Of(Leaf.Text("who agreed, in quotes"), Leaf.Comma)), Leaf.Word("on").Then(Leaf.Date));

    public static readonly Parser<Token, LineSyntax> Counts = Map<Token, Token, NumberSyntax, LineSyntax>(
        (start, points) => new CountsLine(points) { Span = start.Span.To(points.Span) }, Leaf.Word("counts"), Leaf.Number);

    public static readonly Parser<Token, LineSyntax> Until = Map<Token, Token, DateSyntax, LineSyntax>(
        (start, day) => new UntilLine(day) { Span = start.Span.To(day.Span) }, Leaf.Word("until"), Leaf.Date);
}
