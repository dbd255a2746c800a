using System.Text.Json;
using Byrelaw.Reporting.Json;

namespace Byrelaw.Reporting.Tests.Json;

public sealed class JsonTextTests
{
    [Fact]
    public void A_draft_reads_as_approved() => Snapshot.Verify(JsonText.Of(InventedDraft.Make()), extension: "json");

    [Fact]
    public void Problems_read_as_approved() => Snapshot.Verify(JsonText.Of(InventedDraft.Make().Herd.Problems), extension: "json");

    [Fact]
    public void The_keys_are_those_of_the_schema_in_every_object()
    {
        var root = JsonDocument.Parse(JsonText.Of(InventedDraft.Make())).RootElement;
        Keys(root).ShouldBe(["programme", "judged_with", "rulebook", "records", "known_day", "doubts", "lists"]);
        var list = root.GetProperty("lists")[0];
        Keys(list).ShouldBe(["list", "session", "judged_from", "judged_to", "counts", "animals"]);
        Keys(list.GetProperty("counts")).ShouldBe(["ready", "on_course", "later", "ask", "no"]);
        foreach (var animal in list.GetProperty("animals").EnumerateArray())
        {
            Keys(animal).ShouldBe(["animal", "answer", "ready_from", "ready_until", "not_before", "score", "in_the_way", "settle", "then_ask", "rules"]);
            foreach (var rule in animal.GetProperty("rules").EnumerateArray())
            {
                Keys(rule).ShouldBe(["rule", "answer", "expected", "turns_on", "found", "basis", "evidence"]);
                rule.GetProperty("evidence").EnumerateArray().ShouldAllBe(evidence => Keys(evidence).SequenceEqual(new[] { "kind", "date", "file", "line" }));
            }
        }
    }

    [Fact]
    public void The_counts_are_those_of_the_animals()
    {
        var list = JsonDocument.Parse(JsonText.Of(InventedDraft.Make())).RootElement.GetProperty("lists")[0];
        foreach (var count in list.GetProperty("counts").EnumerateObject())
        {
            list.GetProperty("animals").EnumerateArray().Count(animal => animal.GetProperty("answer").GetString() == count.Name).ShouldBe(count.Value.GetInt32());
        }
    }

    private static IEnumerable<string> Keys(JsonElement element) => element.EnumerateObject().Select(property => property.Name);
}
