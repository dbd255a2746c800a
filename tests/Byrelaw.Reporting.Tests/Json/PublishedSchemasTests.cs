using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using Byrelaw.Reporting.Json;

namespace Byrelaw.Reporting.Tests.Json;

/// <summary>
/// What <c>--format json</c> prints has a published form, a JSON Schema (draft 2020-12) for each command. The form is made from the types that are written,
/// so that neither can change without the other; what the commands really print is held to it by <c>ProgramsFormTests</c> of the program's tests.
/// </summary>
public sealed class PublishedSchemasTests
{
    public static TheoryData<string, Type, string> Forms => new()
    {
        { "draft", typeof(DraftJson), "draft and why: every animal of every list, with its answer, what is in the way, what would settle it, and the records behind it" },
        { "records", typeof(RecordsJson), "records: what is on record, what is wrong with it by row and by cause, and what is doubted" },
        { "promises", typeof(PromisesJson), "records --promises: which promises would open how much of each list" },
        { "problems", typeof(ProblemsJson), "check, and any command whose rules cannot be read: what is wrong in rule files" },
        { "coverage", typeof(CheckJson), "check --coverage: what is wrong, and what no worked example shows of each rule" },
        { "compare", typeof(CompareJson), "compare: what differs between two rulebooks, and which animals feel it" },
        { "tune", typeof(TuneJson), "tune: how many animals each value of a rule's numbers lets in" },
        { "plan", typeof(PlanJson), "plan: who is named for which session, what must be done by when, what comes of it and what it costs" },
        { "verify", typeof(VerifyJson), "verify: whether a kept report still stands" },
    };

    [Theory]
    [MemberData(nameof(Forms))]
    public void The_form_is_the_published_one(string name, Type type, string about)
    {
        var schema = (JsonObject)JsonShapes.Readable.Options.GetJsonSchemaAsNode(type, new JsonSchemaExporterOptions { TreatNullObliviousAsNonNullable = true, TransformSchemaNode = Narrowed });
        var published = new JsonObject { ["$schema"] = "https://json-schema.org/draft/2020-12/schema", ["title"] = $"byrelaw {about.Split(':')[0]} --format json", ["description"] = about.Split(": ", 2)[1] };
        foreach (var (key, value) in schema)
        {
            published[key] = value?.DeepClone();
        }

        // Left out where it would be empty.
        if (published["required"] is JsonArray required && required.FirstOrDefault(key => (string?)key == "inputs") is { } inputs)
        {
            required.Remove(inputs);
        }

        var text = published.ToJsonString(new JsonSerializerOptions { WriteIndented = true, NewLine = "\n" }) + "\n";
        var path = Repository.At($"docs/schemas/{name}.schema.json");
        if (Environment.GetEnvironmentVariable("SNAPSHOT_UPDATE") == "1")
        {
            File.WriteAllText(path, text);
        }

        File.ReadAllText(path).ShouldBe(text, $"docs/schemas/{name}.schema.json is not the form that is written; SNAPSHOT_UPDATE=1 writes it anew");
    }

    [Fact]
    public void Every_form_is_told_of_on_the_page_for_programs()
    {
        var page = File.ReadAllText(Repository.At("docs/programs.md"));
        Directory.EnumerateFiles(Repository.At("docs/schemas")).Select(file => Path.GetFileName(file)!).ShouldAllBe(file => page.Contains($"schemas/{file}", StringComparison.Ordinal));
        Directory.EnumerateFiles(Repository.At("docs/schemas")).Count().ShouldBe(Forms.Count);
    }

    /// <summary>Words of which there are only a few, and days.</summary>
    private static JsonNode Narrowed(JsonSchemaExporterContext context, JsonNode schema)
    {
        if (schema is not JsonObject node || context.PropertyInfo is not { } property || property.PropertyType != typeof(string))
        {
            return schema;
        }

        string[]? words = (property.DeclaringType.Name, property.Name) switch
        {
            (nameof(AnimalJson), "answer") => ["ready", "on_course", "later", "ask", "no", "matches", "will_match"],
            (nameof(AnimalJson), "in_calf") => ["take_as_in_calf", "may_be_in_calf"],
            (nameof(RuleJson), "answer") => ["met", "not_met", "not_known", "does_not_apply", "broken"],
            (nameof(MissingJson), "settled_by") => ["yards", "laboratory_or_time"],
            (nameof(ProblemJson), "severity") => ["error", "warning"],
            (nameof(MorningJson), "work") => ["hormones", "scans", "samples", "transfer"],
            _ => null,
        };
        if (words is not null)
        {
            node["enum"] = new JsonArray([.. words.Select(word => (JsonNode)word)]);
        }
        else if (property.Name is "judged_from" or "judged_to" or "ready_from" or "ready_until" or "not_before" or "turns_on" or "from" or "to" or "date" or "first" or "last" or "complete_since" or "since" or "reaches"
            or "first_transfer" or "final_transfer" or "day_zero" or "due" or "last_start" or "today" or "records_end")
        {
            node["format"] = "date";
        }

        return node;
    }
}
