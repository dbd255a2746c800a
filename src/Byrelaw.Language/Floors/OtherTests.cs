namespace Byrelaw.Language.Floors;

/// <summary>
/// Tests of a farm's own that are about pregnancy, as their names or their answers say: <c>test milk sample answers "in calf", open</c>. The floor asks for each that none has found a
/// calf, or left it open, since she calved, slipped her calf or came, or that a pregnancy test that is not by hand has found none on a later day.
/// </summary>
internal static class OtherTests
{
    /// <summary>Each such test with its answers that do not clearly say "found none".</summary>
    public static IEnumerable<(TestKind Test, ImmutableArray<string> Answers)> Of(IEnumerable<Kind> kinds) =>
        from test in kinds.OfType<TestKind>()
        where !IsThePregnancyTest(test)
        let answers = Doubted(test)
        where !answers.IsEmpty
        select (test, answers);

    /// <summary>The lines that ask for them; none where there are none.</summary>
    /// <param name="tests">The tests.</param>
    /// <param name="ends">What ends a pregnancy, or begins her time here, as <c>calving or abortion or purchase</c>.</param>
    public static IEnumerable<string> Lines(IReadOnlyList<(TestKind Test, ImmutableArray<string> Answers)> tests, string ends)
    {
        foreach (var (test, answers) in tests)
        {
            yield return $"define {Agrees(test)}";
            yield return "  any of";
            yield return $"    - no {string.Join(" or ", answers.Select(answer => NameText.Text($"{answer} {test.Name}")))} since last {ends}";
            yield return $"    - latest pregnancy test with method not hand from 1 day after last {NameText.Text(test.Name)} is empty";
        }

        if (tests.Count > 0)
        {
            yield return "define floor own tests agree";
            yield return "  all of";
            foreach (var (test, _) in tests)
            {
                yield return $"    - {Agrees(test)}";
            }
        }
    }

    /// <summary>Whether another name for an answer says that there is a calf, and the answer does not.</summary>
    /// <param name="name">The other name.</param>
    /// <param name="answer">The answer that it would stand for.</param>
    /// <param name="test">The test, without names for its answers.</param>
    public static bool Contradicts(string name, string answer, TestKind test)
    {
        var isPregnancyTest = IsThePregnancyTest(test);
        var isDoubted = isPregnancyTest ? !CalfWords.FoundNone(answer) : Doubted(test).Contains(answer);
        return !isDoubted && (isPregnancyTest ? !CalfWords.FoundNoneInShort(name) : IsAboutACalf(test) ? CalfWords.Affirm(name) : CalfWords.Speak(name) && !CalfWords.FoundNone(name));
    }

    /// <summary>
    /// Whether a text of a source cannot mean that none was found, and the answer that it is read as says so; or says that one was, and is read as what a test for something else found.
    /// The rest of a source is in its sender's codes.
    /// </summary>
    /// <param name="text">The text.</param>
    /// <param name="where">What another column says beside it; null for nothing.</param>
    /// <param name="answer">As what it is read.</param>
    /// <param name="test">The test.</param>
    public static bool TurnRound(string text, string? where, string answer, TestKind test)
    {
        var isPregnancyTest = IsThePregnancyTest(test);
        var isNone = isPregnancyTest ? CalfWords.FoundNone(answer) : IsAboutACalf(test) && !Doubted(test).Contains(answer);
        return (!isPregnancyTest && !IsAboutACalf(test) && CalfWords.Speak(text) && CalfWords.FoundACalf(text)) || isNone && (where is null ? CalfWords.CannotMeanNone(text) : CalfWords.FoundACalf(where) || (CalfWords.CannotMeanNone(text) && !CalfWords.FoundNoneInShort(where)));
    }

    /// <summary>Whether a test may say that a cow is in calf.</summary>
    public static bool LookForOne(TestKind test) => IsThePregnancyTest(test) || IsAboutACalf(test);

    /// <summary>A farm whose own test is a scan of ovaries too is not asked about these.</summary>
    private static ImmutableArray<string> Doubted(TestKind test) => SpeaksOfACalf(test)
        ? [.. test.Answers.Where(answer => !CalfWords.FoundNone(answer) && !(AreInShort(test) && CalfWords.FoundNoneInShort(answer)))]
        : LooksForACalf(test) ? [.. test.Answers.Where(answer => !CalfWords.FoundNone(answer) && !CalfWords.SpeakOfElse(answer))]
        : Names(test).All(CalfWords.AreOnlyOfASample) ? [.. test.Answers.Where(CalfWords.Affirm)] : [];

    private static bool IsAboutACalf(TestKind test) => SpeaksOfACalf(test) || LooksForACalf(test) || !Doubted(test).IsEmpty;

    /// <summary>P and O, or P and E: what people shorten a scan's answers to.</summary>
    private static bool AreInShort(TestKind test) => test.Answers.Any(answer => NameFolding.Fold(answer) == "p") && test.Answers.Any(answer => NameFolding.Fold(answer) is "o" or "e" or "mt");

    private static bool SpeaksOfACalf(TestKind test) => Names(test).Any(CalfWords.Speak) || AreInShort(test)
        || test.Answers.Concat(test.AnswersAlso.Select(also => also.Name)).Any(answer => CalfWords.Speak(answer) || Names(test).All(name => CalfWords.MaySpeak(answer, name)));

    private static bool LooksForACalf(TestKind test) => Names(test).Any(CalfWords.LookForACalf);

    private static IEnumerable<string> Names(TestKind test) => [test.Name, .. test.AlsoNames];

    private static bool IsThePregnancyTest(TestKind test) => NameFolding.Fold(test.Name) == "pregnancy test";

    private static string Agrees(TestKind test) => NameText.Text($"floor {test.Name} agrees");
}
