namespace Byrelaw.Reporting.Tests.Pages;

/// <summary>Every sort of page, whole.</summary>
public sealed class PageTests
{
    private static readonly Dictionary<string, string> Files = Report.Of(InventedDraft.Make()).ToDictionary(file => file.Path, file => file.Text);

    [Theory]
    [InlineData("index")]
    [InlineData("recipients/index")]
    [InlineData("animals/1007")]
    [InlineData("animals/1012")]
    [InlineData("animals/1019")]
    [InlineData("animals/1031")]
    [InlineData("animals/1033")]
    [InlineData("animals/1040")]
    [InlineData("animals/1055")]
    [InlineData("animals/1423")]
    public void Pages_read_as_approved(string path) => Snapshot.Verify(Files[path + ".md"], path.Replace('/', '-'), "md");

    [Theory]
    [InlineData("recipients/index")]
    [InlineData("animals/1423")]
    public void Html_is_made_of_the_pages_as_approved(string path) => Snapshot.Verify(Files[path + ".html"], path.Replace('/', '-'), "html");

    [Fact]
    public void The_list_for_the_yards_reads_as_approved() => Snapshot.Verify(Files["recipients/draft.csv"], extension: "csv");

    [Fact]
    public void A_list_for_treatment_says_what_a_hormone_does_at_its_head_and_among_its_cautions_and_its_table_for_a_spreadsheet_on_every_line()
    {
        var files = Report.Of(InventedDraft.Make(list: "treatment")).ToDictionary(file => file.Path, file => file.Text);
        var page = files["treatment/index.md"];
        Snapshot.Verify(page, extension: "md");
        page.ShouldNotContain("☐");
        page.Split("ends a pregnancy").Length.ShouldBe(3);
        var lines = files["treatment/draft.csv"].Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Skip(1).ToList();
        lines.Count.ShouldBe(8);
        lines.ShouldAllBe(line => line.Contains("ends a pregnancy") && line.Contains("check her status today") && line.Contains("Not to be handled by"));
        page.ShouldContain("Not in calf: not proven for 1 of 8 animals.");
    }

    [Fact]
    public void Each_of_the_two_lists_says_what_the_other_one_says_of_her()
    {
        var draft = InventedDraft.Make();
        var recipients = draft.Lists[0];
        var treatment = recipients with
        {
            Choice = recipients.Choice with { List = "treatment" },
            Animals = [.. recipients.Animals.Select(animal => animal.Number == "1007" ? animal with { Answer = Answer.Later, ReadyFrom = new(2026, 11, 8), InCalf = InCalf.TakeAsInCalf } : animal)],
        };
        var both = draft with { Rulebook = draft.Rulebook with { Programme = draft.Rulebook.Programme! with { Choices = [recipients.Choice, treatment.Choice] } }, Lists = [recipients, treatment] };
        var pages = Report.Of(both).ToDictionary(file => file.Path, file => file.Text);
        Row(pages["recipients/index.md"], "1007").ShouldContain("hormone: ○ Later from 8 Nov");
        Row(pages["recipients/index.md"], "1012").ShouldNotContain("hormone: ");
        Row(pages["treatment/index.md"], "1007").ShouldContain("**Take her as in calf**");
        pages["treatment/index.md"].ShouldContain("**Take as in calf** **1007**. No hormone, no pipette.");
        pages["recipients/index.md"].ShouldContain($"Both checks: {recipients.Animals.Count(animal => animal.Answer.MayBeUsed()) - 1} may be treated on");
    }

    private static string Row(string page, string number) => page.Split('\n').First(line => line.Contains($"[**{number}**]", StringComparison.Ordinal));

    [Fact]
    public void A_list_with_broken_lines_says_so_at_the_top() =>
        Snapshot.Verify(Report.Of(InventedDraft.Make(broken: true)).Single(file => file.Path == "recipients/index.md").Text.Split("\n## ")[0], extension: "md");

    [Fact]
    public void A_draft_as_known_on_an_earlier_day_says_what_that_does_not_take_back() =>
        Report.Of(InventedDraft.Make() with { KnownOn = new NodaTime.LocalDate(2026, 8, 31) })
            .Where(file => file.Path.EndsWith(".md", StringComparison.Ordinal) && file.Path is not ("index.md" or "rules.md")).ShouldAllBe(file => file.Text.Contains("Judged as known on 31 August 2026"));

    [Fact]
    public void No_dose_is_ever_named() =>
        Files.Values.ShouldAllBe(text => !System.Text.RegularExpressions.Regex.IsMatch(text, @"\d\s*(mg|mL|ml|IU|µg|mcg)\b"));
}
