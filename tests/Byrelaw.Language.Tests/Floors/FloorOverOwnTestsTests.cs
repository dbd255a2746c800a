namespace Byrelaw.Language.Tests.Floors;

/// <summary>The floor is laid over whatever tests a farm has of its own: it asks those whose answers say that they find a calf.</summary>
public sealed class FloorOverOwnTestsTests
{
    [Theory]
    [InlineData("milk sample", "\"in calf\", open", "no in calf milk sample")]
    [InlineData("blood draw", "pregnant, \"not pregnant\", doubtful", "no pregnant blood draw")]
    [InlineData("PD", "\"PD positive\", \"in calf twins\", negative", "no PD positive PD or in calf twins PD")]
    [InlineData("\"milk or blood, in the last week\"", "Pregnant, empty", "no Pregnant milk or blood, in the last week")]
    [InlineData("\"at least 1 of them\"", "\"calf found\", nothing", "no calf found at least 1 of them")]
    [InlineData("\"Dr. O'Grady's \\\"look\\\"\"", "gravid, \"non gravid\"", "no gravid Dr. O'Grady's \"look\"")]
    [InlineData("Trächtigkeit", "\"in calf\", nicht", "no in calf Trächtigkeit")]
    [InlineData("milk PAG", "positive, negative", "no positive milk PAG")]
    [InlineData("Befund", "trächtig, \"nicht trächtig\"", "no trächtig Befund")]
    public void A_test_that_finds_a_calf_is_asked(string test, string answers, string asked) => Lines(test, answers).ShouldContain($"{asked} since last calving or abortion or purchase");

    [Theory]
    [InlineData("milk sample", "high, low")]
    [InlineData("heat check", "\"not in calf\", \"no calf found\"")]
    [InlineData("Q fever", "positive, negative")]
    public void One_of_which_the_program_cannot_tell_is_not(string test, string answers) => Lines(test, answers).ShouldNotContain("agrees");

    /// <summary>The floor's defines, one after the other, none of them broken.</summary>
    private static string Lines(string test, string answers)
    {
        var rulebook = Rules.Good($"use base vocabulary edition 1\ntest {test} answers {answers}\n");
        rulebook.Floor.Length.ShouldBe(4);
        rulebook.Floor.ShouldAllBe(rule => !rule.IsBroken);
        var floor = rulebook.Defines.Where(define => define.IsOfTheFloor).ToList();
        floor.ShouldAllBe(define => !define.IsBroken);
        return string.Join('\n', floor.Select(define => $"{define.Name}: {CanonicalText.Of(define.Condition)}"));
    }
}
