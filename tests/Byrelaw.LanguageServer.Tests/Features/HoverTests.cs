namespace Byrelaw.LanguageServer.Tests.Features;

public sealed class HoverTests
{
    [Fact]
    public async Task Every_sort_of_name_is_explained()
    {
        using var folder = new TemporaryFolder();
        Farm.Write(folder);
        await using var editor = await Editor.StartAsync(folder.Path, new FixedClock(2026, 10, 5));
        foreach (var (name, text) in new[] { ("words.byre", Farm.Words), ("rules.byre", Farm.Rules), ("farm.byre", Farm.Programme) })
        {
            (await editor.OpenAsync(folder.At(name), text)).ShouldBe("");
        }

        var told = "";
        foreach (var (file, marked) in new[]
        {
            ("words.byre", "event calv|ing"), ("words.byre", "event sa|le"), ("words.byre", "serum cop|per"), ("words.byre", "body condi|tion"),
            ("words.byre", "BVD| virus"), ("words.byre", "answers pos|itive"), ("words.byre", "bre|ed  is one"), ("words.byre", "breeding in|dex"), ("words.byre", "running| with"),
            ("rules.byre", "applies to co|ws"), ("rules.byre", "needs cycl|ing"), ("rules.byre", "\"Udder s|ound"), ("rules.byre", "\"Good cond|ition"),
            ("rules.byre", "rules for recip|ients"), ("farm.byre", "change \"Eight w|eeks"), ("farm.byre", "choose recip|ients"), ("farm.byre", "to final trans|fer"),
        })
        {
            var hover = await editor.AskAsync("textDocument/hover", editor.At(folder.At(file), marked));
            told += $"=== {marked}\n{hover.GetProperty("contents").GetProperty("value").GetString()}\n\n";
        }

        Snapshot.Verify(told, extension: "md");
    }

    [Fact]
    public async Task Counts_follow_the_records_and_say_when_there_are_none()
    {
        using var folder = new TemporaryFolder();
        Farm.Write(folder);
        await using var editor = await Editor.StartAsync(folder.Path, new FixedClock(2026, 10, 5));
        var farm = folder.At("farm.byre");
        await editor.OpenAsync(farm, Farm.Programme);
        (await Hover()).ShouldEndWith("**met by 2** of 4 animals, not met by 1, not known for 1.");

        folder.Write("records/events.csv", "date,animal,kind\n2026-07-01,1,calving\n2026-07-01,2,calving\n2026-07-01,3,calving\n");
        (await Hover()).ShouldEndWith("**met by 3** of 4 animals, not met by 0, not known for 1.");

        File.Delete(folder.At("records/events.csv"));
        (await Hover()).ShouldContain("How many animals it lets in cannot be told: there is no file");

        async Task<string> Hover() =>
            (await editor.AskAsync("textDocument/hover", editor.At(farm, "change \"Eight w|eeks"))).GetProperty("contents").GetProperty("value").GetString()!;
    }

    [Fact]
    public async Task Where_no_name_stands_nothing_is_told()
    {
        using var folder = new TemporaryFolder();
        Farm.Write(folder);
        await using var editor = await Editor.StartAsync(folder.Path);
        var rules = folder.At("rules.byre");
        await editor.OpenAsync(rules, Farm.Rules);
        (await editor.AskAsync("textDocument/hover", editor.At(rules, "at lea|st 56"))).ValueKind.ShouldBe(System.Text.Json.JsonValueKind.Null);
    }
}
