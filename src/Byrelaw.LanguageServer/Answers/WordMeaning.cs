using System.Collections.Immutable;

namespace Byrelaw.LanguageServer.Answers;

/// <summary>What the words of the farm mean, in Markdown.</summary>
internal static class WordMeaning
{
    /// <summary>An event, a measure or a test.</summary>
    public static string Of(Kind kind) => kind switch
    {
        EventKind { IsMobMove: true } => Entry(kind.Name, "the event that takes an animal to another mob", [], []),
        EventKind happened => Entry(kind.Name, "an event", kind.AlsoNames, [
            happened.Effect switch { HerdEffect.Joins => "She joins the herd with it.", HerdEffect.Leaves => "She leaves the herd with it.", _ => "" },
            happened.NotBeforeAge is { } age ? $"It does not happen before {age} of age." : "",
        ]),
        MeasureKind measure => Entry(kind.Name, Value(measure), kind.AlsoNames, [
            measure.MolarMass is { } mass ? string.Create(CultureInfo.InvariantCulture, $"Molar mass {mass} g/mol.") : "", Where(measure.InTheYards),
        ]),
        TestKind test => Entry(kind.Name, $"a test with the answers {string.Join(", ", test.Answers.Select(answer => $"*{Markdown.Text(answer)}*"))}", kind.AlsoNames, [Where(test.InTheYards)]),
        _ => Entry(kind.Name, "a kind of record", kind.AlsoNames, []),
    };

    /// <summary>A fact.</summary>
    public static string Of(Fact fact) => Entry(fact.Name, fact.Type switch
    {
        FactType.OneOf => $"a fact, one of {string.Join(", ", fact.Values.Select(value => $"*{Markdown.Text(value)}*"))}",
        FactType.Number => "a fact, a number",
        FactType.Amount => $"a fact in {Markdown.Text(fact.Unit?.Symbol ?? "")}",
        FactType.Date => "a fact, a date",
        FactType.Identity => "a fact, an official number",
        _ => "a fact, any text",
    }, fact.AlsoNames, ["It is a column of `animals.csv`."]);

    /// <summary>A spell.</summary>
    public static string Of(Spell spell) =>
        Entry(spell.Name, $"a spell from *{Markdown.Text(spell.From.Name)}* until *{Markdown.Text(spell.Until.Name)}*, both days included", [], []);

    /// <summary>A name of the language's own; null where there is nothing to say.</summary>
    public static string? OfBuiltIn(string name) => name switch
    {
        "age" => Entry(name, "how long ago she was born", [], ["Where only a year or a month is on record, an answer holds only if it holds for every possible day."]),
        "parity" => Entry(name, "how often she has calved", [], []),
        "cows" => Entry(name, "females that have calved, or with a recorded parity above 0", [], []),
        "heifers" => Entry(name, "females that have never calved, or with recorded parity 0", [], []),
        "females" => Entry(name, "every female", [], []),
        "birth" => Entry(name, "the day she was born", [], []),
        _ => null,
    };

    private static string Value(MeasureKind measure) => measure switch
    {
        { Unit: { } unit } => $"a measure in {Markdown.Text(unit.Symbol)}",
        { Scale: { } scale } => string.Create(CultureInfo.InvariantCulture, $"a measure on a scale from {scale.From} to {scale.To}"),
        _ => "a measure",
    };

    private static string Where(bool inTheYards) => inTheYards ? "Someone beside the animal can find out." : "It waits for a laboratory.";

    private static string Entry(string name, string what, ImmutableArray<string> also, IEnumerable<string> more)
    {
        string[] said = [also.Length == 0 ? "" : $"Also {string.Join(", ", also.Select(Markdown.Text))}.", .. more];
        return $"**{Markdown.Text(name)}**: {what}" + (Array.TrueForAll(said, sentence => sentence.Length == 0) ? "" : "\n\n" + string.Join(' ', said.Where(sentence => sentence.Length > 0)));
    }
}
