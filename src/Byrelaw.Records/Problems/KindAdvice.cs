using Byrelaw.Language.Canonical;
using Byrelaw.Language.Floors;
using Byrelaw.Records.Suggesting;

namespace Byrelaw.Records.Problems;

/// <summary>
/// How to mend a word for what happened that nobody declares. A word that is known already goes first: what is declared anew is a kind of its own,
/// which no rule reads.
/// </summary>
internal static class KindAdvice
{
    /// <summary>What to write in the rule files.</summary>
    /// <param name="word">The word.</param>
    /// <param name="nearest">The name that is spelt most like it; null for none.</param>
    /// <param name="hinted">Kinds that it may mean, by the hints of the vocabulary.</param>
    public static string InRules(string word, string? nearest, IReadOnlyList<string> hinted) => hinted.Count > 0
        ? $"if it means {Phrases.Or(hinted)}, say so: {Phrases.Or([.. hinted.Select(kind => $"`call {NameText.Exact(kind)} also {NameText.Exact(word)}`")])}"
        : $"{(nearest is null ? "" : $"perhaps `{nearest}` is meant; else ")}give a kind that is declared this name too, {(nearest is null ? $"`call KIND also {NameText.Exact(word)}` with its name for KIND" : $"such as `call {NameText.Exact(nearest)} also {NameText.Exact(word)}`")}; "
            + $"where no rule needs it, declare it, such as `event {NameText.Exact(word)}`, or pass over it with `leave out {NameText.Exact(word)}` under `records`";

    /// <summary>What to write below the column of a farm's own file.</summary>
    public static string BelowColumn(string word, Vocabulary vocabulary)
    {
        Kind[] hinted = [.. vocabulary.Hints.Where(hint => HintedWord.StandsIn(word, hint.Word) && !DaysToCome.AreMeant(word, hint.Kind)).Select(hint => hint.Kind).Distinct()];
        hinted = hinted.Length > 0 ? hinted : [.. Abbreviations.KindsFor(word, vocabulary)];
        return hinted.Length > 0
            ? $"if it means {Phrases.Or([.. hinted.Select(kind => kind.Name)])}, say so below that column: {Phrases.Or([.. hinted.Select(kind => $"`- {NameText.Text(word)} is {NameText.Exact(kind.Name)}{Answer(word, kind)}`")])}"
            : $"say what it means below that column: `- {NameText.Text(word)} is KIND`, with a kind that is declared for KIND, or `- {NameText.Text(word)} is left out`";
    }

    /// <summary>The answer that a word such as <c>PD+</c> says besides.</summary>
    private static string Answer(string word, Kind kind) =>
        kind is TestKind test && AnswerHints.Find(word, test) is { } answer && test.Answers.Contains(answer) ? $", {NameText.Exact(answer)}" : "";

    /// <summary>The kinds that a word may mean, by the hints of the vocabulary; no calving where it is still to come.</summary>
    public static IReadOnlyList<string> Hinted(string word, Vocabulary vocabulary) =>
        [.. vocabulary.Hints.Where(hint => HintedWord.StandsIn(word, hint.Word) && !DaysToCome.AreMeant(word, hint.Kind)).Select(hint => hint.Kind.Name).Distinct()];
}
