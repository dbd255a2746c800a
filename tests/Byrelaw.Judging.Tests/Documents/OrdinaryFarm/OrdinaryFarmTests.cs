namespace Byrelaw.Judging.Tests.Documents;

/// <summary>An ordinary farm is not drowned in questions, and nobody comes through on it whom the whole truth would keep out.</summary>
public sealed class OrdinaryFarmTests
{
    private static readonly IReadOnlyList<Fence> Fences = [.. MarkdownPage.Fences(File.ReadAllText(Repository.At("docs/ordinary-farm.md")).ReplaceLineEndings("\n"))];

    private static readonly string Programme = Fences.First(fence => fence.Language == "byre").Text;

    private static readonly string[] Lines = [.. Fences.Where(fence => fence.Language == "line").Select(fence => fence.Text.Trim())];

    /// <summary>With everything on record, and everything promised that is true.</summary>
    private static readonly Draft Truth =
        new OrdinaryFarmFiles(Programme).Judge([.. Lines, "complete for heat since 2025-07-01"], ["found.csv", "truth.csv"], resultsAreIn: true);

    [Fact]
    public void The_page_says_what_each_line_brings_to_life()
    {
        var farm = new OrdinaryFarmFiles(Programme);
        var (lines, files) = (new List<string>(), new List<string>());
        ExecutedPage.Verify("docs/ordinary-farm.md", fence =>
        {
            switch (fence.Language)
            {
                case "line":
                    lines.Add(fence.Text.Trim());
                    return null;
                case "found":
                    files.Add(fence.Text.Trim());
                    return null;
                case "counts":
                    return Counts(farm.Judge(lines, files));
                default:
                    return null;
            }
        });
        lines.Count.ShouldBe(6);
    }

    [Fact]
    public void After_six_lines_a_third_of_the_fit_cows_may_be_used()
    {
        var judged = new OrdinaryFarmFiles(Programme).Judge(Lines, ["found.csv"]);
        for (var list = 0; list < judged.Lists.Length; list++)
        {
            var fit = Usable(Truth.Lists[list]);
            fit.Count.ShouldBeGreaterThan(30);
            (Usable(judged.Lists[list]).Intersect(fit).Count() * 3).ShouldBeGreaterThanOrEqualTo(fit.Count);
        }
    }

    [Fact]
    public void At_no_step_may_anybody_be_used_whom_a_safety_rule_would_keep_out_if_all_were_known()
    {
        var farm = new OrdinaryFarmFiles(Programme);
        var unsafeOnes = Truth.Lists.Select(list => list.Animals.Where(NotSafe).Select(animal => animal.Number).ToHashSet()).ToList();
        unsafeOnes.Sum(list => list.Count).ShouldBeGreaterThan(20);
        for (var step = 0; step <= Lines.Length; step++)
        {
            // What the farm found out comes with the line for services.
            var judged = farm.Judge(Lines.Take(step), step >= 5 ? ["found.csv"] : []);
            judged.Lists.SelectMany((list, i) => Usable(list).Intersect(unsafeOnes[i])).ShouldBeEmpty($"after {step} lines");
        }
    }

    /// <summary>
    /// The completion that is tried: everything is promised, and on days after the book ends every question is answered well (a scan and a blood test that
    /// find nothing, a clean uterus, a heat; samples at the laboratory come back clean; blank indices all low, or all high).
    /// </summary>
    [Fact]
    public void Whoever_is_asked_about_would_be_used_if_what_is_asked_turned_out_well()
    {
        var asked = new OrdinaryFarmFiles(Programme).Judge(Lines, ["found.csv"]).Lists.Single(list => list.Choice.List == "recipients")
            .Animals.Where(animal => animal.Answer == Answer.Ask).ToList();
        asked.Count.ShouldBeGreaterThan(30);
        asked.Where(animal => animal.Settle.IsEmpty).ShouldBeEmpty();
        var numbers = asked.Select(animal => animal.Number).ToHashSet();
        var rows = numbers.SelectMany(number => new[]
        {
            $"2026-10-20,{number},pregnancy test,empty", $"2026-10-19,{number},BVD virus,negative", $"2026-10-12,{number},heat,",
        }).Concat(asked.Where(animal => animal.Settle.Any(missing => missing.Subject == "uterine check")).Select(animal => $"2026-10-18,{animal.Number},uterine check,clean"));
        // A blank index decides for her own standing if it is low, and for that of others if it is high.
        var usable = new[] { "80", "300" }.SelectMany(index => Usable(new OrdinaryFarmFiles(Programme).Judge(
            [.. Lines, "complete for heat since 2025-07-01"], ["found.csv"], rows,
            OrdinaryFarmFiles.Animals().Select(line => line.EndsWith(',') && !line.Contains(",M,", StringComparison.Ordinal) ? line + index : line),
            "2026-10-21", resultsAreIn: true).Lists.Single(list => list.Choice.List == "recipients")));
        numbers.Except(usable).ShouldBeEmpty();
    }

    private static bool NotSafe(AnimalJudgement animal) => animal.Rules.Any(rule => rule.Rule?.IsSafety == true && rule.Answer is not (RuleAnswer.Met or RuleAnswer.DoesNotApply));

    private static HashSet<string> Usable(ListJudgement list) => [.. list.Animals.Where(animal => animal.Answer.MayBeUsed()).Select(animal => animal.Number)];

    private static string Counts(Draft draft) => string.Concat(draft.Lists.Select((list, i) =>
    {
        var fit = Usable(Truth.Lists[i]);
        var usable = Usable(list);
        return string.Create(CultureInfo.InvariantCulture,
            $"{list.Choice.List}: {usable.Count} may be used, {list.Count(Answer.Ask)} to ask about, {list.Count(Answer.Later)} later, {list.Count(Answer.No)} not; {usable.Intersect(fit).Count()} of {fit.Count} that are fit\n");
    }));
}
