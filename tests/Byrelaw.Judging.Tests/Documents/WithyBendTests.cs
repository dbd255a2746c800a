namespace Byrelaw.Judging.Tests.Documents;

public sealed class WithyBendTests
{
    [Fact]
    public void The_programme_reads_without_a_problem() => WithyBend.Judged.Reading.Problems.ShouldBeEmpty();

    [Fact]
    public void Four_cells_of_the_records_cannot_be_read_and_no_more() =>
        WithyBend.Judged.Herd.Problems.Select(problem => problem.LineText.Split(',')[1]).ShouldBe(["554999999999999", "101?", "1049", "1053"]);

    [Fact]
    public void Its_recipients_get_all_five_answers_over_their_two_gates()
    {
        var lists = WithyBend.Judged.Draft.Lists.Where(list => list.Choice.List is "treatment" or "recipients").ToList();

        foreach (var answer in Enum.GetValues<Answer>())
        {
            lists.Sum(list => list.Count(answer)).ShouldBeGreaterThan(3, answer.ToString());
        }
    }

    [Fact]
    public void Every_story_of_its_README_is_true()
    {
        var lists = WithyBend.Judged.Draft.Lists.ToDictionary(list => list.Choice.List);
        var stories = File.ReadAllLines(Repository.At("examples/withy-bend/README.md"))
            .Select(line => line.Split('|', StringSplitOptions.TrimEntries))
            .Where(cells => cells.Length > 4 && cells[1].All(char.IsAsciiDigit) && cells[1].Length > 0)
            .ToList();

        stories.Count.ShouldBeGreaterThan(40);
        stories.Select(story => $"{story[1]} {story[2]} {story[3]}").ShouldBe(stories.Select(story =>
        {
            var animal = lists[story[2]].Animals.Single(judged => judged.Number == story[1]);
            return $"{story[1]} {story[2]} {(animal.Answer == Answer.OnCourse ? "On course" : animal.Answer.ToString())}";
        }));
    }

    [Fact]
    public void Before_her_mastitis_was_entered_1072_was_on_course() =>
        WithyBend.KnownOn(new LocalDate(2026, 9, 30)).Draft.Lists.Single(list => list.Choice.List == "recipients")
            .Animals.Single(animal => animal.Number == "1072").Answer.ShouldBe(Answer.OnCourse);

    [Fact]
    public void The_waiver_is_what_keeps_1031_on_course()
    {
        var animal = WithyBend.Judged.Draft.Lists.Single(list => list.Choice.List == "recipients").Animals.Single(judged => judged.Number == "1031");

        animal.Rules.Single(rule => rule.Name == "Copper of the mob").Waiver.ShouldNotBeNull().Agreement.By.ShouldBe(["herd vet"]);
    }
}
