using Json.Schema;

namespace Byrelaw.Cli.Tests;

/// <summary>What commands print for programs has the published form, by a validator that is not ours (JsonSchema.Net, draft 2020-12).</summary>
public sealed class ProgramsFormTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    [Theory]
    [InlineData("draft", "draft", "spring.byre")]
    [InlineData("draft", "why", "spring.byre", "1033")]
    [InlineData("records", "records", "records", "--rules", "spring.byre")]
    [InlineData("promises", "records", "records", "--rules", "spring.byre", "--promises")]
    [InlineData("problems", "check", "spring.byre")]
    [InlineData("coverage", "check", "spring.byre", "--coverage")]
    [InlineData("compare", "compare", "spring.byre", "other.byre", "--records", "records")]
    [InlineData("tune", "tune", "spring.byre", "Body condition")]
    [InlineData("plan", "plan", "spring.byre", "--today", "2026-08-01")]
    [InlineData("verify", "verify", "out")]
    public void It_has(string form, params string[] arguments)
    {
        _farm.Run("draft", "spring.byre");
        _farm.Write("other.byre", File.ReadAllText(_farm.At("spring.byre")).Replace("2026-10-12", "2026-10-14", StringComparison.Ordinal));
        _farm.Change("records/events.csv", "body condition,3.5", "body condition,35");
        var run = _farm.Run([.. arguments, "--format", "json"]);
        var schema = JsonSchema.FromText(File.ReadAllText(Repository.At($"docs/schemas/{form}.schema.json")));
        var written = JsonDocument.Parse(run.Out).RootElement;
        var result = schema.Evaluate(written, new EvaluationOptions { OutputFormat = OutputFormat.List });
        result.IsValid.ShouldBeTrue(string.Join('\n', (result.Details ?? []).Where(detail => detail.Errors is { Count: > 0 }).Select(detail => $"{detail.InstanceLocation}: {string.Join(' ', detail.Errors!.Values)}")));

        // The check can fail: without any one of its keys the same is not valid.
        foreach (var key in written.EnumerateObject().Where(one => one.Name is not "inputs").Select(one => one.Name))
        {
            var without = JsonSerializer.SerializeToElement(written.EnumerateObject().Where(one => one.Name != key).ToDictionary(one => one.Name, one => one.Value));
            schema.Evaluate(without).IsValid.ShouldBeFalse(key);
        }
    }
}
