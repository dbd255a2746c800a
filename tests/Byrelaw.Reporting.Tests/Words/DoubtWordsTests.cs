using Byrelaw.Reporting.Json;
using Byrelaw.Reporting.Terminal;

namespace Byrelaw.Reporting.Tests.Words;

/// <summary>Every sort of doubt, as people and programs read it.</summary>
public sealed class DoubtWordsTests
{
    [Fact]
    public void Every_doubt_has_its_sentences()
    {
        var herd = InventedDraft.Make().Herd;
        Snapshot.Verify(string.Concat(InventedDoubts.All.Select(doubt => $"{doubt.Name}: {DoubtWords.Of(doubt.Doubt, herd).Whole()}\n")));
    }

    [Fact]
    public void Every_sort_of_doubt_is_in_the_list() =>
        InventedDoubts.All.Select(doubt => doubt.Doubt.GetType()).Distinct().Count()
            .ShouldBe(typeof(Doubted).Assembly.GetTypes().Count(type => type.BaseType == typeof(Doubted)));

    [Fact]
    public void Every_reason_to_doubt_a_row_is_in_the_list() =>
        InventedDoubts.All.Select(doubt => doubt.Doubt).OfType<RowsInDoubt>().Select(rows => rows.Why).Distinct().Count().ShouldBe(Enum.GetValues<RowDoubt>().Length);

    [Fact]
    public void What_may_be_the_cause_of_others_stands_first_then_what_takes_promises_away_then_what_is_about_most_animals()
    {
        var doubts = InventedDoubts.All.Select(doubt => doubt.Doubt).Reverse().ToImmutableArray();
        var said = DoubtWords.Of(InventedDoubts.Draft(doubts).Herd);
        said.Length.ShouldBe(doubts.Length);
        var others = said.SkipWhile(one => one.IsCauseOfOthers).ToList();
        others.ShouldAllBe(one => !one.IsCauseOfOthers);
        others[0].Animals.Count.ShouldBe(5);
        others.Select(one => one.HeldBack.IsEmpty).ShouldBe(others.Select(one => one.HeldBack.IsEmpty).Order());
    }

    [Fact]
    public void Pages_say_what_is_doubted_before_what_to_do_next()
    {
        var page = Report.Of(InventedDoubts.Draft(InventedDoubts.Fails)).Single(file => file.Path == "recipients/index.md").Text;
        Snapshot.Verify(page.Split("## Do next")[0], extension: "md");
        page.ShouldContain("## What is doubted");
    }

    [Fact]
    public void A_contradiction_stands_on_her_own_page()
    {
        var contradiction = InventedDoubts.All.Single(doubt => doubt.Name == "contradiction").Doubt;
        var files = Report.Of(InventedDoubts.Draft(contradiction)).Where(file => file.Path.StartsWith("animals/", StringComparison.Ordinal) && file.Path.EndsWith(".md", StringComparison.Ordinal)).ToList();
        files.Count(file => file.Text.Contains("Doubted about her records")).ShouldBe(1);
        files.Single(file => file.Text.Contains("Doubted about her records")).Path.ShouldBe("animals/1019.md");
    }

    [Fact]
    public void The_terminal_names_three_and_counts_the_others()
    {
        var text = DraftText.Of(InventedDoubts.Draft([.. InventedDoubts.All.Select(doubt => doubt.Doubt)]), Ink.Plain);
        text.Split("Doubted: ").Length.ShouldBe(4);
        text.ShouldContain($"{InventedDoubts.All.Count - 3} more doubts");
    }

    [Fact]
    public void Programs_read_the_same() =>
        Snapshot.Verify(JsonText.Of(InventedDoubts.Draft([.. InventedDoubts.All.Select(doubt => doubt.Doubt)])).Split("\"lists\"")[0], extension: "json");
}
