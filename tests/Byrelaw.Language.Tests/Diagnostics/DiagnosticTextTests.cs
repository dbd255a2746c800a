namespace Byrelaw.Language.Tests.Diagnostics;

public sealed class DiagnosticTextTests
{
    [Fact]
    public void A_problem_has_its_place_its_line_its_mark_and_its_mend() => Print("  needs no coper", 12, 5, "did you mean `copper`?").ShouldBe(
        "a.byre:14:12: error B0204: found; expected\n   14 |   needs no coper\n      |            ^^^^^\n  help: did you mean `copper`?\n");

    [Fact]
    public void A_warning_without_more_to_say_has_neither_expectation_nor_mend() =>
        DiagnosticText.Of(new Diagnostic("B0604", Severity.Warning, "a.byre", 3, 1, 4, "found", null, null, "rule \"A\""))
            .ShouldBe("a.byre:3:1: warning B0604: found\n    3 | rule \"A\"\n      | ^^^^\n");

    [Fact]
    public void Tabs_take_four_columns_above_and_below() =>
        Print("\t\tneeds x", 9, 1, null).ShouldBe("a.byre:14:9: error B0204: found; expected\n   14 |         needs x\n      |               ^\n");

    [Fact]
    public void Wide_signs_take_two_columns_and_marks_none() =>
        Print("牛 e\u0301 x", 6, 1, null).ShouldBe("a.byre:14:6: error B0204: found; expected\n   14 | 牛 e\u0301 x\n      |      ^\n");

    [Fact]
    public void Signs_that_would_steer_a_terminal_become_dots() =>
        Print("a\u001b[31mb", 1, 1, null).ShouldBe("a.byre:14:1: error B0204: found; expected\n   14 | a·[31mb\n      | ^\n");

    [Fact]
    public void A_very_long_line_is_cut_around_the_mark()
    {
        var lines = Print(new string('x', 500) + "here" + new string('y', 500), 501, 4, null).Split('\n');
        lines[1].Length.ShouldBeLessThan(180);
        lines[1][lines[2].IndexOf('^', StringComparison.Ordinal)..].ShouldStartWith("here");
        lines[2].Count(c => c == '^').ShouldBe(4);
    }

    private static string Print(string line, int column, int length, string? help) =>
        DiagnosticText.Of(new Diagnostic("B0204", Severity.Error, "a.byre", 14, column, length, "found", "expected", help, line));
}
