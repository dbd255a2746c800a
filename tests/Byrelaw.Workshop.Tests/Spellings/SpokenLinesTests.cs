namespace Byrelaw.Workshop.Tests.Spellings;

/// <summary>What people type: read, where it has one meaning everywhere, and printed in the one form; else refused, with the whole line to write.</summary>
public sealed class SpokenLinesTests
{
    private const string More = "measure cell count  in kcells/mL\nmeasure milk  in L\nfact dam  is text\nfact sire  is text\nfact temperament  is one of quiet, dangerous\n";

    /// <summary>Every row of the design that is read, and the edges beside it.</summary>
    [Theory]
    [InlineData("at least two heats since last calving", "at least 2 heats since last calving")]
    [InlineData("at most twelve heats in the last two months", "at most 12 heats in the last 2 months")]
    [InlineData("between two and four heats ever", "between 2 and 4 heats ever")]
    [InlineData("every BVD virus of the last two results is negative", "every BVD virus of the last 2 results is negative")]
    [InlineData("no heat within 45 days", "no heat in the last 45 days")]
    [InlineData("no heat within the last 45 days", "no heat in the last 45 days")]
    [InlineData("no heat in the past 45 days", "no heat in the last 45 days")]
    [InlineData("no heat in last six weeks", "no heat in the last 6 weeks")]
    [InlineData("parity over 6", "parity more than 6")]
    [InlineData("parity above 6", "parity more than 6")]
    [InlineData("parity under six", "parity less than 6")]
    [InlineData("latest weight in the last 60 days below 300 kg", "latest weight in the last 60 days less than 300 kg")]
    [InlineData("fewer than 6 heats ever", "less than 6 heats ever")]
    [InlineData("no more than 2 heats ever", "at most 2 heats ever")]
    [InlineData("not more than 2 heats ever", "at most 2 heats ever")]
    [InlineData("no less than two heats ever", "at least 2 heats ever")]
    [InlineData("no fewer than 2 heats ever", "at least 2 heats ever")]
    [InlineData("age is at least 14 months", "age at least 14 months")]
    [InlineData("at least 14 months old", "age at least 14 months")]
    [InlineData("at least 400 days old", "age at least 400 days")]
    [InlineData("age at least 14 months old", "age at least 14 months")]
    [InlineData("between 2 and 9 years old", "age between 2 and 9 years")]
    [InlineData("older than 14 months", "age more than 14 months")]
    [InlineData("younger than nine years", "age less than 9 years")]
    [InlineData("over 14 months old", "age more than 14 months")]
    [InlineData("parity 2 to 5", "parity between 2 and 5")]
    [InlineData("parity two to five", "parity between 2 and 5")]
    [InlineData("parity between 2 to 5", "parity between 2 and 5")]
    [InlineData("6 to 8 days since last heat", "between 6 and 8 days since last heat")]
    [InlineData("breed is Jersey or Friesian", "breed is one of Jersey, Friesian")]
    [InlineData("latest uterine check ever is clean or discharge", "latest uterine check ever is one of clean, discharge")]
    [InlineData("no heat since calving", "no heat since last calving")]
    [InlineData("no heat since calving or abortion", "no heat since last calving or abortion")]
    [InlineData("at least two heats 18 to 24 days apart since calving", "at least 2 heats between 18 and 24 days apart since last calving")]
    [InlineData("no heat before calving", "no heat before last calving")]
    [InlineData("no heat in the 21 days after calving or abortion", "no heat in the 21 days after last calving or abortion")]
    [InlineData("no heat within two weeks before collection", "no heat in the 2 weeks before collection")]
    [InlineData("latest milk ever at least 20 litres", "latest milk ever at least 20 L")]
    [InlineData("latest milk ever at least 20 liters", "latest milk ever at least 20 L")]
    [InlineData("latest weight ever at least 300 kgs", "latest weight ever at least 300 kg")]
    [InlineData("latest weight ever at least 300 kilos", "latest weight ever at least 300 kg")]
    [InlineData("latest weight ever at least 300000 grams", "latest weight ever at least 300000 g")]
    [InlineData("latest weight ever at least 600 lbs", "latest weight ever at least 600 lb")]
    [InlineData("latest weight ever at least 600 pounds", "latest weight ever at least 600 lb")]
    [InlineData("change in body condition since last calving at least -0.5", "lost at most 0.5 body condition since last calving")]
    [InlineData("change in weight in the last 90 days at least 20 kg", "gained at least 20 kg weight in the last 90 days")]
    [InlineData("average of the last 3 cell count in the last 2 years less than 200 kcells/mL", "average cell count of the last 3 results in the last 2 years less than 200 kcells/mL")]
    [InlineData("lowest weight in the last 60 days 300 to 500 kg", "lowest weight in the last 60 days between 300 and 500 kg")]
    public void What_has_one_meaning_is_read_and_printed_in_the_one_form(string typed, string form)
    {
        var words = Rules.Words + More + "event abortion\n";
        var tidied = Tidying.Tidied.Text($"{words}\ndefine it\n  {typed}\n");
        tidied.ShouldEndWith($"\n\ndefine it\n  {form}\n");
        Tidying.Tidied.Text(tidied).ShouldBe(tidied);
        CanonicalText.Of(Rules.Condition(typed, More + "event abortion")).ShouldBe(CanonicalText.Of(Rules.Condition(form, More + "event abortion")));
    }

    /// <summary>A declared name wins over every such word, and only where one is meant.</summary>
    [Theory]
    [InlineData("event over 6", "no \"over 6\" ever")]
    [InlineData("fact under  is number", "under at least 6")]
    [InlineData("event two", "at least 2 two ever")]
    [InlineData("fact drop over 6 weeks  is number", "drop over 6 weeks at least 3")]
    public void A_declared_name_wins(string declared, string condition) =>
        Tidying.Tidied.Text($"{declared.Replace("over 6", "\"over 6\"", StringComparison.Ordinal).Replace("drop \"over 6\" weeks", "\"drop over 6 weeks\"", StringComparison.Ordinal)}\ndefine it\n  {condition.Replace("drop over 6 weeks", "\"drop over 6 weeks\"", StringComparison.Ordinal)}\n")
            .ShouldContain("define it\n");

    /// <summary>Every row of the design that is refused: the help is the whole line mended, and pasting it mends it.</summary>
    [Theory]
    [InlineData("56 days since last calving", "at least 56 days since last calving")]
    [InlineData("parity 5", "parity exactly 5")]
    [InlineData("no heat within 45 days of calving", "no heat in the 45 days after last calving")]
    [InlineData("no heat within 45 days after last calving", "no heat in the 45 days after last calving")]
    [InlineData("no heat within 45 days since last calving", "no heat in the 45 days after last calving")]
    [InlineData("a heat in the last 24 days", "at least 1 heat in the last 24 days")]
    [InlineData("any heat in the last 24 days", "at least 1 heat in the last 24 days")]
    [InlineData("at least 60 days in milk", "at least 60 days since last calving")]
    [InlineData("days in milk at least 60", "at least 60 days since last calving")]
    [InlineData("pregnant", "latest pregnancy test since last calving is pregnant")]
    [InlineData("not pregnant", "latest pregnancy test since last calving is not pregnant")]
    [InlineData("empty", "latest pregnancy test since last calving is empty")]
    [InlineData("daughter of \"1021\"", "dam is \"1021\"")]
    [InlineData("by \"Bull X\"", "sire is \"Bull X\"")]
    [InlineData("breed is not Jersey or Friesian", "breed is not one of Jersey, Friesian")]
    [InlineData("age >= 14 months", "age at least 14 months")]
    [InlineData("latest body condition ever 4-5.5", "latest body condition ever between 4 and 5.5")]
    [InlineData("no mastitis ever and no metritis ever", "all of\n    - no mastitis ever\n    - no metritis ever")]
    [InlineData("no mastitis ever or at least 1 heat ever or parity over 3", "any of\n    - no mastitis ever\n    - at least 1 heat ever\n    - parity over 3")]
    public void What_could_mean_two_things_is_refused_with_the_line_to_write(string typed, string mended)
    {
        var text = $"{Rules.Words}{More}\nrules for recipients\nrule \"It\"\n  needs {typed}\n  because \"It is asked.\"\n  source \"example\"\n";
        var reading = Rules.Read(text).Corrected();
        var problem = reading.Problems.First(problem => problem.Severity == Severity.Error);
        var pasted = problem.Correction.ShouldNotBeNull(DiagnosticText.Of(problem)).In(text);
        pasted.ShouldContain($"  needs {mended}\n");
        Rules.Read(pasted).Problems.ShouldNotContain(other => other.Severity == Severity.Error);
        if (problem.Code is not ("B0131" or "B0112"))
        {
            (problem.Lines ?? problem.Help)!.ShouldContain(mended.Replace("\n    ", "\n  ", StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("needs if at least 1 purchase ever then no metritis ever", "  at least 1 purchase ever\n")]
    [InlineData("if at least 1 purchase ever then no metritis ever", "  at least 1 purchase ever\n")]
    [InlineData("needs no metritis ever unless temperament is quiet", "  none of\n    - temperament is quiet\n")]
    public void If_and_unless_say_whom_the_rule_is_for(string typed, string whom)
    {
        var text = $"{Rules.Words}{More}\nrules for recipients\nrule \"Settled\"\n  {typed}\n  because \"It is asked.\"\n  source \"example\"\n";
        var problem = Rules.Read(text).Corrected().Problems[0];
        problem.Code.ShouldBe("B0341");
        var pasted = problem.Correction.ShouldNotBeNull(DiagnosticText.Of(problem)).In(text);
        pasted.ShouldContain($"define meant for settled\n{whom}\nrule \"Settled\"\n  applies to meant for settled\n  needs no metritis ever\n  because");
        Rules.Good(pasted);
    }

    [Fact]
    public void A_help_that_does_not_mend_is_not_shown() =>
        Rules.Read($"{Rules.Words}\nrules for recipients\nrule \"It\"\n  needs 56 days since last clving\n  because \"x\"\n").Corrected().Problems[0].Help.ShouldBeNull();
}
