namespace Byrelaw.Cli.Tests;

/// <summary>Tuning the example farm, and what is said where there is nothing to tune.</summary>
public sealed class TuneTests : IDisposable
{
    private const string WithyBend = "examples/withy-bend/spring-2026.byre";
    private readonly string _out = Directory.CreateTempSubdirectory("byrelaw-tune-").FullName;

    public void Dispose() => Directory.Delete(_out, recursive: true);

    [Theory]
    [InlineData("body-condition", "Body condition")]
    [InlineData("eight-weeks-calved", "eight weeks Calved")]
    [InlineData("in-a-define", "Not in calf", "--list", "treatment")] // A number of a define is counted on another list that it moves.
    public void A_rule_is_tuned_as_approved(string name, string rule, params string[] more) => Snapshot.Verify(Run(["tune", WithyBend, rule, .. more]).Out, name);

    [Fact]
    public void Two_numbers_of_one_rule_at_once_as_approved() =>
        Snapshot.Verify(Run("tune", "examples/two-farms/alder-brook/spring-2026.byre", "Body condition", "--with", "body condition").Out);

    [Fact]
    public void A_page_says_the_same()
    {
        Run("tune", WithyBend, "Not among the herd's best", "--out", Path.Combine(_out, "page")).Code.ShouldBe(ExitCode.Done);
        Snapshot.Verify(File.ReadAllText(Path.Combine(_out, "page", "tune.md")), extension: "md");
        var html = File.ReadAllText(Path.Combine(_out, "page", "tune.html"));
        html.ShouldContain("role=\"img\" aria-label=\"Animals that may be used, by the top of the herd by breeding index: ");
        html.ShouldContain("<figcaption>");
    }

    [Fact]
    public void Json_tells_the_same()
    {
        var run = Run("tune", "examples/two-farms/alder-brook/spring-2026.byre", "Eight weeks calved", "--format", "json");
        run.Code.ShouldBe(ExitCode.Done);
        var number = JsonDocument.Parse(run.Out).RootElement.GetProperty("numbers").EnumerateArray().ShouldHaveSingleItem();
        number.GetProperty("layers").EnumerateArray().Select(layer => layer.GetProperty("value").GetDouble()).ShouldBe([56, 60, 63]);
        Snapshot.Verify(run.Out, extension: "json");
    }

    [Theory]
    [InlineData("did you mean “Body condition”?", "Body conditoin")]
    [InlineData("holds no number", "Official identity")]
    [InlineData("is left to the day itself", "Corpus luteum felt")]
    [InlineData("is a preference", "Settled in milk")]
    [InlineData("is dropped on this farm", "Vitamin B12 of the mob")]
    [InlineData("no number of it moves the list of donors", "Eight weeks calved", "--list", "donors")]
    [InlineData("it has donors, treatment and recipients", "Eight weeks calved", "--list", "heifers")]
    public void What_cannot_be_tuned_is_said_in_one_line(string says, params string[] args) =>
        Run(["tune", WithyBend, .. args]).ShouldBeOneClearLine(says);

    private static Run Run(params string[] args)
    {
        using var @out = new StringWriter { NewLine = "\n" };
        using var err = new StringWriter { NewLine = "\n" };
        var code = ByrelawApp.Run(args, Doors.Plain(@out, err, Repository.Root) with { Clock = new FixedClock { Now = new(2026, 10, 12, 17, 0, 0, TimeSpan.Zero) } });
        return new Run(code, @out.ToString(), err.ToString());
    }
}
