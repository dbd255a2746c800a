namespace Byrelaw.Judging.Tests.UnsafeReadings;

/// <summary>
/// The page of unsafe readings, judged case by case. What does not come out as it must is listed in the approved text, with
/// what the program says instead: nobody can make a case worse, or better, without its showing there.
/// </summary>
public sealed class UnsafeReadingsTests
{
    private const string Page = "tests/Byrelaw.Judging.Tests/UnsafeReadings/unsafe-readings.md";

    [Fact]
    public void What_does_not_come_out_as_it_must_is_listed()
    {
        var (standard, cases) = UnsafeCase.Read(File.ReadAllText(Repository.At(Page)));
        cases.Count.ShouldBe(394);
        cases.Select(one => one.Number).ShouldBeUnique();
        var (held, unsafeOnes, open) = (0, 0, new StringBuilder());
        foreach (var one in cases)
        {
            var said = new CaseFarm(standard, one).Answers();
            var wrong = one.Answers.Zip(said).Where(pair => pair.First.Answer != pair.Second).ToList();
            held += wrong.Count == 0 ? 1 : 0;
            unsafeOnes += wrong.Exists(pair => LetsThrough(pair.Second) && !LetsThrough(pair.First.Answer)) ? 1 : 0;
            if (wrong.Count > 0)
            {
                open.Append(CultureInfo.InvariantCulture, $"\n{one.Number} {one.Title}\n");
                wrong.ForEach(pair => open.Append(CultureInfo.InvariantCulture, $"  {pair.First.Question}: {pair.Second}, and must be: {pair.First.Answer}\n"));
            }
        }

        Snapshot.Verify($"{held} of {cases.Count} cases come out as they must. In {unsafeOnes} of the others somebody comes through who must not.\n{open}");
    }

    /// <summary>
    /// A page written in a hurry might ask for nothing: each case but those marked, and those of the last chapter, which nobody
    /// could see, has an answer that lets nobody through.
    /// </summary>
    [Fact]
    public void Each_case_holds_somebody_back_or_says_that_she_may_come_through()
    {
        var (_, cases) = UnsafeCase.Read(File.ReadAllText(Repository.At(Page)));
        cases.Where(one => !one.MayComeThrough && !one.Number.StartsWith("16.", StringComparison.Ordinal) && one.Answers.All(HoldsNobodyBack))
            .Select(one => one.Number).ShouldBeEmpty();
    }

    /// <summary>To run with a bull is what holds her back.</summary>
    private static bool HoldsNobodyBack((string Question, string Answer) asked) =>
        asked.Answer is ("Ready" or "On course" or "met") && !asked.Question.Contains(": running with bull", StringComparison.Ordinal);

    private static bool LetsThrough(string answer) => answer is "Ready" or "On course" or "met" or "met, expected";
}
