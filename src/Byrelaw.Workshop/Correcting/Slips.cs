using System.Text.RegularExpressions;

namespace Byrelaw.Workshop.Correcting;

/// <summary>
/// Takes back what a hand may have done near a problem: typed a word twice, left one out, swapped two, misspelt one, or typed
/// one too many. The likeliest come first; none has been tried.
/// </summary>
internal static partial class Slips
{
    // A slip shows where the line stops making sense, which is at most a few words later.
    private const int WordsBefore = 4;
    private const int WordsAfter = 2;

    /// <summary>Slips that keep every word that was typed, or one of each.</summary>
    public static IEnumerable<Proposal> OfTheHand(Diagnostic problem, TypedStatement statement, RereadParts draft)
    {
        if (!MayShowIn(problem.Code))
        {
            return [];
        }

        var near = Near(statement);
        var certain = Doubled(statement, near).Concat(Swapped(statement, near));
        return problem.Code is "B0201" or "B0506" or "B0813" ? Doubled(statement, near)
            : problem.Code == "B0404" ? LostHeads.Above(statement).Concat(certain)
            : IsUnderstood(problem.Code) ? certain
            : certain.Concat(IncompleteNames.In(statement, near.Min(), near.Max(), draft.Names));
    }

    /// <summary>Words that may be misspelt, missing, or too many.</summary>
    public static IEnumerable<Proposal> InWords(Diagnostic problem, TypedStatement statement, RereadParts draft)
    {
        if (!MayShowIn(problem.Code) || IsUnderstood(problem.Code))
        {
            return [];
        }

        var near = Near(statement);
        var known = WordsLeftOut.Known(draft.Names, statement.Kind);
        var unknown = near.Where(word => char.IsLetter(statement.Words[word].Text[0]) && !known.Contains(statement.Bare(word).Text)).ToList();
        var expected = BackTicked().Matches(problem.Expected ?? "").Select(match => match.Groups[1].Value);
        var places = near.Append(near.Max() + 1).OrderBy(place => FollowsAGap(statement, place) ? 0 : 1).ToList();
        return Misspelt(statement, unknown, known)
            .Concat(places.Where(place => FollowsAGap(statement, place)).SelectMany(place => Missing(statement, place)))
            .Concat(expected.Select(word => Missing(statement, statement.First, word)))
            .Concat(places.SelectMany(place => Missing(statement, place)))
            .Concat(unknown.Where(word => word > 0).Select(word => Without(statement, word)))
            .Concat(LastComma(statement));
    }

    private static List<int> Near(TypedStatement statement)
    {
        var from = Math.Max(0, Math.Min(statement.First, statement.Words.Count - 1) - WordsBefore);
        var to = Math.Min(statement.Words.Count - 1, statement.Last + WordsAfter);
        return [.. Enumerable.Range(from, to - from + 1).OrderBy(word => Math.Abs(word - statement.First))];
    }

    /// <summary>Whether such a problem may come of a slip in its line; others are about what the line says.</summary>
    private static bool MayShowIn(string code) =>
        code is not ("B0339" or "B0340" or "B0341") && (code is "B0106" or "B0137" or "B0201" or "B0204" or "B0205" or "B0206" or "B0207" or "B0502" or "B0506" or "B0813"
        || code.StartsWith("B03", StringComparison.Ordinal) || (code is not ("B1201" or "B1202" or "B1203" or "B1261") && code.StartsWith("B12", StringComparison.Ordinal)) || (code != "B0413" && code.StartsWith("B04", StringComparison.Ordinal)));

    /// <summary>Whether it is known what the line tries to say: no word more or less would say it. Or nobody can know which word is left out, and the wrong one
    /// says the opposite.</summary>
    private static bool IsUnderstood(string code) => code is "B0320" or "B0332" or "B0201" or "B0404" or "B0405" or "B0406" or "B0407" or "B0409" or "B0412" or "B0506" or "B0813";

    /// <summary>Whether a place stands after several spaces: what follows them was set off as something of its own.</summary>
    private static bool FollowsAGap(TypedStatement statement, int place) =>
        place > 0 && place < statement.Words.Count && statement.Words[place].Start - statement.Words[place - 1].End > 1;

    private static IEnumerable<Proposal> Doubled(TypedStatement statement, IEnumerable<int> near) =>
        from word in near
        where word > 0 && statement.Folded(word) == statement.Folded(word - 1)
        select Without(statement, word);

    private static IEnumerable<Proposal> Misspelt(TypedStatement statement, IEnumerable<int> unknown, IReadOnlySet<string> known) =>
        from word in unknown
        let meant = NearestName.To(statement.Bare(word).Text, known)
        where meant is not null
        select new Proposal(statement.Bare(word), meant);

    private static IEnumerable<Proposal> Swapped(TypedStatement statement, IEnumerable<int> near)
    {
        foreach (var word in near)
        {
            if (word + 1 < statement.Words.Count)
            {
                var (one, other) = (statement.Words[word], statement.Words[word + 1]);
                yield return new Proposal(one.To(other), $"{other.Text} {one.Text}");
            }
        }
    }

    private static IEnumerable<Proposal> Missing(TypedStatement statement, int place) =>
        place == 0 && WordsLeftOut.StartsLine(statement.Folded(0), statement.Kind) ? []
        : place == 0 && statement.Words[0].Text.EndsWith(".byre\"", StringComparison.OrdinalIgnoreCase) ? [Missing(statement, 0, "use")]
        : WordsLeftOut.At(place, statement.Kind).Where(word => place == 0 || WordsLeftOut.Follows(word, statement.Folded(place - 1))).Select(word => Missing(statement, place, word));

    private static Proposal Missing(TypedStatement statement, int place, string word) => place < statement.Words.Count
        ? Proposal.Before(statement.Words[place], word + " ")
        : Proposal.After(statement.Words[^1], " " + word);

    /// <summary>A comma at the end of a line, after which nothing came.</summary>
    private static IEnumerable<Proposal> LastComma(TypedStatement statement)
    {
        var last = statement.Words[^1];
        return last.Text.EndsWith(',') ? [new Proposal(last with { Start = last.End - 1, Length = 1 }, "")] : [];
    }

    /// <summary>Takes a word out, and the space on one side of it.</summary>
    private static Proposal Without(TypedStatement statement, int word)
    {
        var at = statement.Words[word];
        var start = word > 0 ? statement.Words[word - 1].End : at.Start;
        var end = word > 0 || statement.Words.Count == 1 ? at.End : statement.Words[1].Start;
        return new Proposal(new SourceSpan(at.File, start, end - start), "");
    }

    // What follows "such as" is one of many.
    [GeneratedRegex("(?<!such as )`([a-z]+)`")]
    private static partial Regex BackTicked();
}
