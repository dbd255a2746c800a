namespace Byrelaw.Language.Tests.Blocks;

/// <summary>Several problems on several lines do not hide one another, whatever line is broken.</summary>
public sealed class ProblemsBesideEachOtherTests
{
    private const string File = """
        event calving
        event heat
        event mastitis
        measure weight  in kg
        define cycling
          at least 1 heet since last calving
        rules for recipients
        rule "A"
          applies to coows
          needs all of
            - no mastitis
            - latest weight in the last 60 days at least 300
            - cyclin
          because "a
          agreed by "vet" on 14/6/2026
        prefer "B"
          between 8 and 6 days since last heat
          counts two
          because "b"
        programme "C"
          collection on 2026-13-01
          choose recipient from females, judged on collection
        """;

    private static readonly (int Line, string Code)[] Problems =
    [
        (6, "B0204"), (9, "B0204"), (11, "B0301"), (12, "B0307"), (13, "B0204"), (14, "B0101"), (15, "B0121"), (17, "B0312"), (18, "B0402"), (21, "B0123"), (22, "B0805"),
    ];

    [Fact]
    public void Each_line_is_told_about() => Told(File).ShouldBe(Problems);

    [Theory]
    [InlineData("define cycling", "defin cycling", 5, "B0401")]
    [InlineData("define cycling", "define >cycling", 5, "B0131")]
    [InlineData("rule \"A\"", "ruel \"A\"", 8, "B0401")]
    [InlineData("rule \"A\"", "rule A", 8, "B0411")]
    [InlineData("rule \"A\"", "rule “A”", 8, "B0102")]
    [InlineData("prefer \"B\"", "perfer \"B\"", 16, "B0401")]
    [InlineData("prefer \"B\"", "prefer", 16, "B0402")]
    [InlineData("programme \"C\"", "programm \"C\"", 20, "B0401")]
    [InlineData("programme \"C\"", "programme C", 20, "B0411")]
    [InlineData("rules for recipients", "rules of recipients", 7, "B0402")]
    public void A_broken_header_hides_nothing_below_it(string head, string broken, int line, string code)
    {
        var told = Told(File.Replace(head, broken, StringComparison.Ordinal));

        told.ShouldContain((line, code));
        // Without its programme a list is not drawn up, and so nobody asks for its rules.
        Problems.Except(told).Where(problem => problem.Line != 22).ShouldBeEmpty();
    }

    [Fact]
    public void Several_signs_on_one_line_are_all_told_about() =>
        Told("define it\n  (age >= 13 months) & [parity < 6]\n").Select(problem => problem.Code).ShouldBe(["B0132", "B0131", "B0132", "B0131", "B0132", "B0131", "B0132"]);

    private static (int Line, string Code)[] Told(string text) => [.. Rules.Read(text).Problems.Select(problem => (problem.Line, problem.Code))];
}
