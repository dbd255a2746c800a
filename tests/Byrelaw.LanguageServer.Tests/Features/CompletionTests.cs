namespace Byrelaw.LanguageServer.Tests.Features;

public sealed class CompletionTests
{
    [Theory]
    [InlineData("  needs |", "latest", "no", "at least", "between", "age", "breed", "cycling", "running with bull", "any of", "not", "in mob")]
    [InlineData("  needs not |", "cycling", "running with bull", "in mob")]
    [InlineData("  needs no |", "mastitis", "calving", "bulling", "positive BVD virus")]
    [InlineData("  needs no mast|", "mastitis")]
    [InlineData("  needs no mastitis |", "in the last", "ever", "since last", "or", "at least")]
    [InlineData("  needs no mastitis in the last 30 |", "days", "weeks")]
    [InlineData("  needs at least 56 days since last |", "calving", "BVD virus", "body condition")]
    [InlineData("  needs latest |", "body condition", "BVD virus", "serum copper")]
    [InlineData("  needs latest body |", "body condition", "body temperature")]
    [InlineData("  needs latest body co|", "body condition")]
    [InlineData("  needs latest serum copper ever at least 7 |", "umol/L", "mg/L")]
    [InlineData("  needs latest BVD virus ever is |", "positive", "negative", "one of", "not one of")]
    [InlineData("  needs breed is |", "Friesian", "Jersey", "recorded")]
    [InlineData("  needs breed is one of Friesian, |", "Jersey")]
    [InlineData("  needs no mastitis in the 60 days before |", "collection", "first transfer")]
    [InlineData("  applies to |", "cows", "heifers", "cycling")]
    [InlineData("  |", "needs", "applies to", "because", "if not known ask", "on the day", "source")]
    [InlineData("drop |", "\"Udder sound\"")]
    [InlineData("waive \"|", "\"Udder sound\"")]
    [InlineData("  needs age at least 13 |", "months")]
    [InlineData("|", "rule", "safety rule", "rules for", "define", "event", "prefer")]
    public async Task What_may_stand_here_is_offered(string line, params string[] offered)
    {
        var labels = await Labels(line);
        foreach (var one in offered)
        {
            labels.ShouldContain(one);
        }
    }

    [Theory]
    [InlineData("  needs no |", "body condition", "breed", "cycling", "BVD virus")]
    [InlineData("  needs latest |", "mastitis", "breed")]
    [InlineData("  needs latest BVD virus |", "more than", "of her mob", "not in the top")]
    [InlineData("  needs latest body condition |", "is")]
    [InlineData("  needs latest body |", "BVD virus")]
    [InlineData("  needs no mastitis |", "is", "more than", "of her mob")]
    [InlineData("  needs cycling |", "in the last", "is", "at least")]
    [InlineData("  needs latest body condition ever at least 5 |", "umol/L", "days")]
    [InlineData("  applies to |", "breed", "mastitis")]
    [InlineData("# a comment |", "needs", "rule")]
    [InlineData("  because \"The |", "needs", "Udder sound")]
    [InlineData("  needs at least 5|", "days")]
    public async Task What_may_not_stand_here_is_not(string line, params string[] wrong)
    {
        var labels = await Labels(line);
        foreach (var one in wrong)
        {
            labels.ShouldNotContain(one);
        }
    }

    [Theory]
    [InlineData("  |", "calving", "breed", "body condition", "BVD virus", "parity", "judged on", "records to", "expect", "not kept", "mob", "rank")]
    [InlineData("|", "records", "rule", "calving")]
    [InlineData("  body |", "body condition", "body temperature")]
    [InlineData("  breed |", "Friesian", "Jersey")]
    [InlineData("  BVD virus 2026-10-01 |", "positive", "negative")]
    [InlineData("  records |", "to")]
    [InlineData("  records to 2026-10-01\n  |", "expect", "calving")]
    [InlineData("  rank 3 of 40 by |", "breeding index")]
    [InlineData("  not kept |", "calving", "BVD virus")]
    [InlineData("  expect |", "\"Udder sound\"", "cycling", "recipients")]
    [InlineData("  expect cycling false, because of |", "calving", "breed", "cycling")]
    public async Task In_an_example_what_may_stand_on_record_is_offered(string line, params string[] offered)
    {
        var labels = await Labels(Example + line);
        foreach (var one in offered)
        {
            labels.ShouldContain(one);
        }
    }

    [Theory]
    [InlineData("  |", "cycling", "age", "needs", "complete for")]
    [InlineData("  body |", "breed", "calving")]
    [InlineData("  breed |", "calving", "breed", "positive")]
    [InlineData("  calving |", "breed", "less than", "Friesian")]
    [InlineData("  BVD virus 2026-10-01 |", "calving", "Friesian")]
    [InlineData("  records to 2026-10-01\n  |", "complete for", "up to")]
    [InlineData("  mob |", "calving", "breed")]
    [InlineData("  rank 3 of 40 by |", "breed", "calving")]
    [InlineData("  expect |", "calving", "breed")]
    public async Task In_an_example_what_may_not_is_not(string line, params string[] wrong)
    {
        var labels = await Labels(Example + line);
        foreach (var one in wrong)
        {
            labels.ShouldNotContain(one);
        }
    }

    [Fact]
    public async Task A_begun_name_is_replaced_as_a_whole()
    {
        using var folder = new TemporaryFolder();
        await using var editor = await Editor.StartAsync(folder.Path);
        var path = folder.At("a.byre");
        await editor.OpenAsync(path, Farm.Words + "define fit\n  latest body co\n");
        var list = await editor.AskAsync("textDocument/completion", editor.At(path, "body co|\n"));
        var item = list.GetProperty("items").EnumerateArray().Single(item => item.GetProperty("label").GetString() == "body condition");
        item.GetProperty("textEdit").ToString().ShouldBe("""{"range":{"start":{"line":17,"character":9},"end":{"line":17,"character":16}},"newText":"body condition"}""");
    }

    [Fact]
    public async Task Files_that_could_be_used_are_offered()
    {
        using var folder = new TemporaryFolder();
        Farm.Write(folder);
        await using var editor = await Editor.StartAsync(folder.Path);
        var path = folder.At("season/new.byre");
        await editor.OpenAsync(path, "use \"\n");
        var list = await editor.AskAsync("textDocument/completion", editor.At(path, "use \"|"));
        list.GetProperty("items").EnumerateArray().Select(item => item.GetProperty("label").GetString())
            .ShouldBe(["\"../farm.byre\"", "\"../rules.byre\"", "\"../words.byre\""]);
    }

    private const string Example = "  needs cycling\n\nexample \"One\"\n  cow born 2021\n";

    private static async Task<List<string>> Labels(string line)
    {
        using var folder = new TemporaryFolder();
        await using var editor = await Editor.StartAsync(folder.Path);
        var path = folder.At("a.byre");
        const string Before = "define cycling\n  at least 1 heat since last calving\nrules for recipients\nrule \"Udder sound\"\n  needs no mastitis ever\n\nrule \"New\"\n";
        await editor.OpenAsync(path, Farm.Words + Before + line.Replace("|", "", StringComparison.Ordinal) + "\n# after\n");
        var list = await editor.AskAsync("textDocument/completion", editor.At(path, line + "\n# after"));
        return [.. list.GetProperty("items").EnumerateArray().Select(item => item.GetProperty("label").GetString()!)];
    }
}
