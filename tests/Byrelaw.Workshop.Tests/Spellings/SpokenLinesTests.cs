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

    /// <summary>A declared name wins over every such word: what is asked of is the thing of that name, and not the line that would be read without it.</summary>
    [Theory]
    [InlineData("event two", "no two in the last 5 days", "no two in the last 5 days")]
    [InlineData("event two", "at least two ever", "")]
    [InlineData("fact over  is number", "over at least 6", "over at least 6")]
    [InlineData("fact under  is number", "under 6", "under exactly 6")]
    [InlineData("fact older  is number", "older less than 6", "older less than 6")]
    [InlineData("", "at least two heats ever", "at least 2 heats ever")]
    public void A_declared_name_wins(string declared, string condition, string means)
    {
        var reading = Rules.Read($"{Rules.Words}{declared}\n\nrules for recipients\nrule \"It\"\n  needs {condition}\n  because \"It is asked.\"\n  source \"example\"\n").Corrected();
        var problem = reading.Problems.FirstOrDefault(found => found.Severity == Severity.Error);
        var said = problem is null ? CanonicalText.Of(reading.Rulebook.Rules.Single(rule => rule.Name == "It").Needs) : problem.Help?.Split('`') is [_, var mend, ..] ? mend : "";
        said.ShouldBe(means);
    }

    /// <summary>Every row of the design that is refused: the help is the whole line mended, and pasting it mends it.</summary>
    [Theory]
    [InlineData("56 days since last calving", "at least 56 days since last calving")]
    [InlineData("parity 5", "parity exactly 5")]
    [InlineData("no heat within 45 days after last calving", "no heat in the 45 days after last calving")]
    [InlineData("no heat within 45 days since last calving", "no heat in the 45 days after last calving")]
    [InlineData("a heat in the last 24 days", "at least 1 heat in the last 24 days")]
    [InlineData("any heat in the last 24 days", "at least 1 heat in the last 24 days")]
    [InlineData("at least 60 days in milk", "at least 60 days since last calving")]
    [InlineData("days in milk at least 60", "at least 60 days since last calving")]
    [InlineData("pregnant", "latest pregnancy test since last calving is pregnant")]
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

    /// <summary>What was meant cannot be known, and one of the lines would let animals through: each is named, and none is put in for the writer.</summary>
    [Theory]
    [InlineData("needs no heat within 45 days of calving", "B0339", "for the days after it write `no heat in the 45 days after last calving`")]
    [InlineData("needs any of\n    - 56 days since last calving\n    - no heat ever", "B0339", "write `at least 56 days since last calving` or `at most 56 days since last calving`")]
    [InlineData("needs not pregnant", "B0339", "use the rule `Not in calf` of the base rules")]
    [InlineData("needs empty", "B0339", "from 28 days after last mating or transfer is empty`")]
    [InlineData("needs shared", "B0339", "`shared` is an answer of one test, other test: write `latest`, the test")]
    [InlineData("needs heat in the last 24 days", "B0332", "for none of it write `no heat in the last 24 days`, for one or more `at least 1 heat in the last 24 days`")]
    [InlineData("needs none of\n    - mating in the last 28 days", "B0332", "for one or more `at least 1 mating in the last 28 days`")]
    [InlineData("needs no pregnancy test since last calving", "B0320", "write which answer is counted: `pregnant pregnancy test`")]
    [InlineData("needs pregnancy test is empty", "B0333", "without one a result of any age counts")]
    public void What_nobody_can_know_is_said_and_nothing_is_put_in(string typed, string code, string help)
    {
        var reading = Rules.Read($"{Rules.Words}{More}test one test  answers shared, other\ntest other test  answers shared, absent\n\nrules for recipients\nrule \"It\"\n  {typed}\n  because \"It is asked.\"\n  source \"example\"\n").Corrected();
        var problem = reading.Problems.First(found => found.Severity == Severity.Error);
        problem.Code.ShouldBe(code);
        problem.Correction.ShouldBeNull();
        problem.Help.ShouldNotBeNull().ShouldContain(help);
    }

    /// <summary>A line that is half typed breaks off nothing.</summary>
    [Theory]
    [InlineData("weeks and two")]
    [InlineData("days to ten")]
    [InlineData("and one")]
    [InlineData("to twelve to")]
    public void A_line_of_numbers_in_words_that_makes_no_sense_is_told(string typed) =>
        Rules.Read($"{Rules.Words}\ndefine it\n  {typed}\n").Problems.ShouldContain(problem => problem.Severity == Severity.Error);

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
