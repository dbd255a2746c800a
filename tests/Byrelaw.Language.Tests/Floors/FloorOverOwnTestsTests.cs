using System.Text.RegularExpressions;

namespace Byrelaw.Language.Tests.Floors;

/// <summary>The floor is laid over whatever tests a farm has of its own: it asks those whose answers say that they find a calf.</summary>
public sealed class FloorOverOwnTestsTests
{
    [Theory]
    [InlineData("milk sample", "\"in calf\", open", "no in calf milk sample")]
    [InlineData("PD", "\"PD positive\", \"in calf twins\", negative", "no PD positive PD or in calf twins PD")]
    [InlineData("\"milk or blood, in the last week\"", "Pregnant, empty", "no Pregnant milk or blood, in the last week")]
    [InlineData("\"at least 1 of them\"", "\"calf found\", nothing", "no calf found at least 1 of them")]
    [InlineData("\"Dr. O'Grady's \\\"look\\\"\"", "gravid, \"non gravid\"", "no gravid Dr. O'Grady's \"look\"")]
    [InlineData("Trächtigkeit", "\"in calf\", nicht", "no in calf Trächtigkeit")]
    [InlineData("milk PAG", "positive, negative", "no positive milk PAG")]
    [InlineData("Befund", "trächtig, \"nicht trächtig\"", "no trächtig Befund")]
    public void A_test_that_finds_a_calf_is_asked(string test, string answers, string asked) => Lines(test, answers).ShouldContain($"{asked} since last calving or abortion or purchase");

    /// <summary>What a farm may call a test of its own, what it may answer, and which answers are a calf or a doubt; "none" where the test is about something else.</summary>
    [Theory]
    // An answer says so by itself; one that is hedged, or denies the opposite, does too.
    [InlineData("milk sample", "\"in calf, not sure\", \"not in calf\"", "in calf, not sure")]
    [InlineData("milk sample", "\"not empty\", empty", "not empty")]
    [InlineData("milk sample", "\"no doubt in calf\", open", "no doubt in calf")]
    [InlineData("milk sample", "\"not open\", open", "not open")]
    [InlineData("milk sample", "pregnant, \"not pregnant?\"", "pregnant; not pregnant?")]
    [InlineData("milk sample", "preg, \"preg no\"", "preg")]
    [InlineData("milk sample", "\"in-calf\", \"not in-calf\"", "in-calf")]
    [InlineData("milk sample", "\"INCALF\", \"no in calf twins\"", "INCALF; no in calf twins")]
    [InlineData("milk sample", "\"PD+\", \"PD-\"", "PD+")]
    [InlineData("milk sample", "\"P.D. pos\", \"P.D. neg.\"", "P.D. pos")]
    [InlineData("milk sample", "\"ＰＤ＋\", \"ＰＤ－\"", "ＰＤ＋")]
    [InlineData("stock card", "carrying, empty", "carrying")]
    [InlineData("stock card", "bred, open", "bred")]
    [InlineData("stock card", "bred, cull", "bred; cull")]
    [InlineData("stock card", "heavy, light, empty", "heavy; light")]
    [InlineData("stock card", "\"2 months\", open", "2 months")]
    [InlineData("visit", "\"foetal heartbeat\", nothing", "foetal heartbeat")]
    [InlineData("visit", "conceived, returned", "conceived; returned")]
    [InlineData("visit", "\"with calf\", without", "with calf; without")]
    [InlineData("blood draw", "pregnant, \"not pregnant\", doubtful", "pregnant; doubtful")]
    [InlineData("blood draw", "gestante, \"no gestante\", vacía", "gestante")]
    [InlineData("blood draw", "drachtig, \"niet drachtig\", leeg", "drachtig")]
    // The name says what it looks for.
    [InlineData("PD", "positive, negative", "positive")]
    [InlineData("PD", "\"+\", \"-\"", "+")]
    [InlineData("PD", "\"+ve\", \"-ve\", \"+/-\"", "+ve; +/-")]
    [InlineData("PD", "yes, \"no\", maybe", "yes; maybe")]
    [InlineData("PD", "heavy, \"not seen\", \"no PD\", \"not found\"", "heavy; not seen; no PD; not found")]
    [InlineData("PD", "done, \"not done\"", "done; not done")]
    [InlineData("pregtest", "a, b", "a; b")]
    [InlineData("pregnancies", "one, two, \"none\"", "one; two")]
    [InlineData("gestation check", "early, mid, late", "early; mid; late")]
    [InlineData("\"in calf check\"", "settled, \"not settled\", open", "settled; not settled")]
    [InlineData("look also PD", "\"1\", \"0\"", "1; 0")]
    // A scan that is called nothing else looks for a calf; ovaries beside it are none.
    [InlineData("vet scan", "\"6 weeks\", \"8 weeks\", nothing", "6 weeks; 8 weeks")]
    [InlineData("\"autumn scan 2\"", "y, n", "y")]
    [InlineData("rectal", "early, cyst, CL, nothing", "early")]
    // A calf is what was found, whatever the test is called; and of a sample of milk that is called nothing else, what is positive.
    [InlineData("visit", "calf, nothing", "calf")]
    [InlineData("visit", "\"twins\", calf, empty", "twins; calf")]
    [InlineData("milk sample", "positive, negative", "positive")]
    [InlineData("\"blood test 2\"", "\"+\", clear", "+")]
    // About something else.
    [InlineData("BVD milk sample", "positive, negative", "none")]
    [InlineData("calf check", "strong, weak", "none")]
    [InlineData("mastitis test", "positive, negative", "none")]
    [InlineData("milk sample", "high, low", "none")]
    [InlineData("heat check", "\"not in calf\", \"no calf found\"", "none")]
    [InlineData("Q fever", "positive, negative", "none")]
    [InlineData("lung scan", "clear, positive", "none")]
    [InlineData("ovary scan", "CL, follicle, quiet", "none")]
    [InlineData("vet scan", "CL, follicle, quiet, clean", "none")]
    [InlineData("rumen fill", "full, empty", "none")]
    [InlineData("cervix look", "open, closed", "none")]
    [InlineData("foot look", "sound, carrying", "none")]
    [InlineData("breeding", "\"home-bred\", \"well bred\"", "none")]
    [InlineData("suckling", "\"with calf at foot\", dry", "none")]
    [InlineData("udder", "heavy, light", "none")]
    [InlineData("pre calving look", "ready, \"not ready\"", "none")]
    public void Its_answers_are_a_calf_or_a_doubt_but_for_those_that_clearly_are_none(string test, string answers, string doubted)
    {
        var name = test.Split(" also ")[0].Trim('"');
        var asked = Regex.Match(Lines(test, answers), $"^floor {Regex.Escape(name)} agrees: .*?no (.*?) since last calving or abortion or purchase", RegexOptions.Multiline | RegexOptions.Singleline).Groups[1].Value;

        string.Join("; ", asked.Split(" or ").Select(one => one.Length == 0 ? "none" : one[..^(name.Length + 1)])).ShouldBe(doubted);
    }

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
