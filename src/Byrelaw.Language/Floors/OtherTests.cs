namespace Byrelaw.Language.Floors;

/// <summary>
/// Tests of a farm's own that may find a calf, as their answers say: <c>test milk sample answers "in calf", open</c>. The floor asks for each that none has found one since
/// she calved, slipped her calf or came, or that a pregnancy test that is not by hand has found none on a later day.
/// </summary>
internal static class OtherTests
{
    private static readonly ImmutableArray<string> FindsACalf = ["pregnant", "preg", "in calf", "calf found", "gravid", "PD positive", "trächtig", "tragend", "drachtig", "pleine", "gestante", "preñada"];

    // What a test says whose name says what it looks for, as of `test milk PAG answers positive, negative`.
    private static readonly ImmutableArray<string> LooksForACalf = ["PD", "PAG", "preg", "pregnant", "pregnancy", "in calf", "scan"];
    private static readonly ImmutableArray<string> Found = ["positive", "pos", "yes", "found"];

    private static readonly ImmutableArray<string> FindsNone = ["not", "no", "none", "non", "never", "nicht", "niet", "pas"];

    /// <summary>Each such test with the answers that say so.</summary>
    public static IEnumerable<(TestKind Test, ImmutableArray<string> Answers)> Of(IEnumerable<Kind> kinds) =>
        from test in kinds.OfType<TestKind>()
        where NameFolding.Fold(test.Name) != "pregnancy test"
        let looks = Stands(LooksForACalf, test.Name)
        let answers = test.Answers.Where(answer => SaysInCalf(answer) || (looks && Stands(Found, answer) && !Stands(FindsNone, answer))).ToImmutableArray()
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

    /// <summary>Whether an answer says by itself that there is a calf.</summary>
    public static bool SaysInCalf(string answer) => Stands(FindsACalf, answer) && !Stands(FindsNone, answer);

    /// <summary>Whether another name for an answer may say that there is a calf, beside the answers that the test has.</summary>
    public static bool MaySayInCalf(string name, IEnumerable<string> answers) =>
        SaysInCalf(name) || (answers.Any(SaysInCalf) && Stands(Found, name) && !Stands(FindsNone, name));

    private static string Agrees(TestKind test) => NameText.Text($"floor {test.Name} agrees");

    private static bool Stands(ImmutableArray<string> words, string name) => words.Any(word => HintedWord.StandsIn(name, word));
}
