namespace Byrelaw.Checking.Tests.Trouble;

/// <summary>Random rules about few things and few numbers, so that many of them have to do with each other.</summary>
internal sealed class RandomRules(Random random)
{
    private static readonly string[] Events = ["calving", "heat", "mating"];
    private static readonly string[] Times = ["20 days", "30 days", "40 days", "56 days", "60 days", "2 months", "9 weeks"];

    /// <summary>So many rules of one list, two of which say who is a cow and who is a heifer.</summary>
    public string Write(int count)
    {
        var rules = "rules for recipients\nrule \"cow\"\nneeds parity at least 1\nbecause \"b\"\nrule \"heifer\"\nneeds parity exactly 0\nbecause \"b\"\n";
        for (var i = 0; i < count; i++)
        {
            rules += $"rule \"{i}\"\n{Pick("", "", "", "applies to cows\n", "applies to heifers\n")}needs {Demand()}\n{Pick("", "", "", "if not known pass\n", "if not known exclude\n")}because \"b\"\n";
        }

        var odd = Condition();
        return "define odd\n  " + (odd.Contains("odd", StringComparison.Ordinal) ? "running with bull" : odd) + "\n" + rules
            + "records \".\"\nprogramme \"p\"\n  transfer on 2026-10-19\n  choose recipients from females, judged on first transfer, for looking only\n";
    }

    private string Demand() => random.Next(5) < 3
        ? Condition()
        : Pick("any of", "all of", "none of", "at least 2 of") + string.Concat(Enumerable.Range(0, random.Next(2, 4)).Select(_ => "\n- " + Condition()));

    private string Condition() => random.Next(26) switch
    {
        0 or 1 => $"no {Kinds()} {Window()}",
        2 => $"at least {random.Next(1, 3)} {Kinds()} {Window()}",
        3 => $"at most 1 {Kinds()} {Window()}",
        4 => $"exactly {random.Next(0, 3)} {Kinds()} {Window()}",
        5 or 6 => $"{Compare()} {Pick(Times)} since last {Kinds()}",
        7 => $"between {Pick("20 and 40 days", "1 month and 2 months", "30 and 30 days")} since last {Kinds()}",
        8 => $"age {Compare()} {Pick("14 months", "15 months", "2 years", "3 years")}",
        9 => $"parity {Compare()} {random.Next(0, 3)}",
        10 or 11 => $"latest body condition {Window()} {Compare()} {Pick("4", "4.5", "5")}",
        12 => $"{Pick("lowest", "highest", "average")} body condition {Window()} {Compare()} {Pick("4", "4.5", "5")}",
        13 => $"change in body condition {Window()} {Compare()} {Pick("-1", "0", "1")}",
        14 or 15 => $"latest neospora {Window()} {Pick("is", "is not")} {Pick("positive", "negative")}",
        16 => $"no positive neospora {Window()}",
        17 => $"at least 1 positive neospora {Window()}",
        18 => $"breed {Pick("is", "is not", "is one of", "is not one of")} {Pick("Jersey", "Friesian")}",
        19 => $"breed {Pick("is recorded", "is not recorded")}",
        20 => $"breeding index {Compare()} {Pick("90", "100")}",
        21 => Pick("running with bull", "not running with bull"),
        22 => $"{Pick("", "not ")}running with bull {Window()}",
        23 => $"latest weight {Window()} {Compare()} {Pick("60", "70")}% of mature weight",
        24 => $"breeding index {Pick("", "not ")}in the top {Pick("10", "50")}% of the herd",
        _ => $"{Pick("", "not ")}odd",
    };

    private string Window() => random.Next(8) switch
    {
        0 or 1 => $"in the last {Pick(Times)}",
        2 => $"since last {Kinds()}",
        3 => $"from {Pick(Times)} after last {Kinds()}",
        4 => $"between {Pick("20 and 40 days", "1 month and 2 months")} ago",
        5 => Pick("ever", "since birth", "since 2026-09-01"),
        6 => $"in the last {Pick(Times)} at least {Pick(Times)} ago",
        _ => "in the 30 days before 2026-10-01",
    };

    private string Kinds() => random.Next(4) == 0 ? $"{Pick(Events)} or {Pick(Events)}" : Pick(Events);

    private string Compare() => Pick("at least", "at most", "more than", "less than", "exactly");

    private string Pick(params string[] choices) => choices[random.Next(choices.Length)];
}
