using NodaTime.Text;

namespace Byrelaw.LanguageServer.Answers;

/// <summary>What a name means, in Markdown.</summary>
internal static class Meanings
{
    /// <summary>The meaning; null where this reading does not know the thing.</summary>
    public static string? Of(RootReading reading, NamedThing thing)
    {
        var rulebook = reading.View.Reading.Rulebook;
        return thing.Sort switch
        {
            NameSort.Event or NameSort.Measure or NameSort.Test => rulebook.Vocabulary.FindKind(thing.Key) is { } kind ? WordMeaning.Of(kind) : null,
            NameSort.Fact => rulebook.Vocabulary.FindFact(thing.Key) is { } fact ? WordMeaning.Of(fact) : null,
            NameSort.Spell => rulebook.Vocabulary.Spells.FirstOrDefault(spell => Is(thing, spell.Name)) is { } spell ? WordMeaning.Of(spell) : null,
            NameSort.Answer => $"An answer of the test **{Markdown.Text(rulebook.Vocabulary.FindKind(thing.Owner)?.Name ?? thing.Owner)}**",
            NameSort.Value => $"A value of the fact **{Markdown.Text(rulebook.Vocabulary.FindFact(thing.Owner)?.Name ?? thing.Owner)}**",
            NameSort.Define => rulebook.Defines.FirstOrDefault(define => Is(thing, define.Name)) is { } define ? Markdown.Rules(Block(reading, define.Span)) : null,
            NameSort.Rule => Rule(reading, rulebook, thing),
            NameSort.Date => Date(rulebook, thing),
            NameSort.List => List(rulebook, thing),
            _ => WordMeaning.OfBuiltIn(thing.Key),
        };
    }

    private static string? Rule(RootReading reading, Rulebook rulebook, NamedThing thing)
    {
        var rule = rulebook.Rules.FirstOrDefault(rule => Is(thing, rule.Name)) ?? rulebook.Drops.FirstOrDefault(drop => Is(thing, drop.Rule.Name))?.Rule;
        if (rule is not null)
        {
            var versions = Versions(rule, rule => rule.Before).Select(version => version.Span);
            return Texts(reading, versions.Concat(rulebook.Drops.Where(drop => Is(thing, drop.Rule.Name)).Select(drop => drop.Span)));
        }

        return rulebook.Prefers.FirstOrDefault(prefer => Is(thing, prefer.Name)) is { } prefer
            ? Texts(reading, Versions(prefer, prefer => prefer.Before).Select(version => version.Span))
            : null;
    }

    /// <summary>From the first version to the one that holds.</summary>
    private static List<T> Versions<T>(T last, Func<T, T?> before) where T : class
    {
        var versions = new List<T>();
        for (T? version = last; version is not null; version = before(version))
        {
            versions.Insert(0, version);
        }

        return versions;
    }

    private static string Texts(RootReading reading, IEnumerable<SourceSpan> blocks) =>
        string.Join("\n\n", blocks.Select(span => Markdown.Rules(Block(reading, span))));

    private static string Date(Rulebook rulebook, NamedThing thing) =>
        rulebook.Programme?.Dates.FirstOrDefault(date => Is(thing, date.Name)) is { } set
            ? $"A date of the programme: **{LocalDatePattern.Iso.Format(set.Date)}**"
            : "A date of the programme. It is set in the programme's own file.";

    private static string? List(Rulebook rulebook, NamedThing thing)
    {
        var rules = rulebook.Rules.Count(rule => Is(thing, rule.List));
        var choice = rulebook.Programme?.Choices.FirstOrDefault(choice => Is(thing, choice.List));
        var judged = choice is null ? "" : string.Create(
            CultureInfo.InvariantCulture, $", judged from {LocalDatePattern.Iso.Format(choice.JudgedFrom)} to {LocalDatePattern.Iso.Format(choice.JudgedTo)}");
        return rules == 0 ? null : $"A list with {rules} {(rules == 1 ? "rule" : "rules")}{judged}";
    }

    /// <summary>A block as it is written.</summary>
    private static string Block(RootReading reading, SourceSpan head)
    {
        var item = reading.View.OutlineOf(head.File).FirstOrDefault(item => item.Span.Start <= head.Start && head.Start < item.Span.End);
        return (item?.Span ?? head).Text;
    }

    private static bool Is(NamedThing thing, string name) => NameFolding.Fold(name) == thing.Key;
}
