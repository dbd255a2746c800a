namespace Byrelaw.Language.Tests.Support;

/// <summary>Random rule files in which every line can be read.</summary>
internal static class RandomRules
{
    /// <summary>Names of every awkward sort: reserved words inside, words of lines, digits, quotes, other scripts.</summary>
    private static readonly string[] Events =
        ["calving", "heat", "\"bull in\"", "milk fever", "dry-off", "\"days open\"", "\"no trouble\"", "\"source at birth\"", "\"9 \\\"x\\\" \\\\\"", "Kühe gemolken", "охота"];

    private static readonly string[] Numbers = ["0", "1", "2", "56", "365"];

    private static readonly Gen<string> Event = OneOf(Events);

    private static readonly Gen<string> Time = Gen.Select(OneOf(Numbers), OneOf("days", "weeks", "months", "years"), (count, unit) => $"{count} {unit}");

    private static readonly Gen<string> Events1To3 = Event.Array[1, 3].Select(events => string.Join(" or ", events));

    private static readonly Gen<string> Window = Gen.OneOf(
        Time.Select(time => $"in the last {time}"),
        Time.Select(time => $"at least {time} ago"),
        Gen.Const("between 2 weeks and 1 year ago"),
        Gen.Const("between 2 and 30 days ago"),
        Gen.Select(Time, OneOf("collection", "first transfer", "\"turn of year\"", "2026-10-12"), (time, date) => $"in the {time} before {date}"),
        Events1To3.Select(events => $"since last {events}"),
        Gen.Select(Time, Events1To3, (time, events) => $"from {time} after last {events}"),
        OneOf("since 2026-06-01", "since final transfer", "since birth", "ever"));

    private static readonly Gen<string> Windows = Window.Array[1, 2].Select(windows => string.Join(' ', windows.Distinct()));

    private static readonly Gen<string> How = Gen.Select(OneOf("at least", "at most", "more than", "less than", "exactly"), OneOf(Numbers), (how, count) => $"{how} {count}");

    private static readonly Gen<string> Condition = Gen.OneOf(
        Gen.Select(Events1To3, Windows, (events, windows) => $"no {events} {windows}"),
        Gen.Select(How, Events1To3, Windows, (how, events, windows) => $"{how} {events} {windows}"),
        Windows.Select(windows => $"no positive BVD virus or \"not seen\" \"check of womb\" {windows}"),
        Gen.Select(OneOf("at least", "exactly"), Time, Events1To3, (how, time, events) => $"{how} {time} since last {events}"),
        Gen.Const("between 6 and 8 days since last weight"),
        Gen.Select(How, OneOf("months", "years"), (how, unit) => $"age {how} {unit}"),
        How.Select(how => $"parity {how}"),
        Gen.Select(OneOf("latest", "lowest", "highest", "average", "change in"), Windows, How, (what, windows, how) => $"{what} copper {windows} {how}.25 mmol/L"),
        Windows.Select(windows => $"latest weight {windows} between 60.5% of mature weight and 900 kg"),
        Windows.Select(windows => $"latest \"check of womb\" {windows} is not one of clean, \"not seen\""),
        Gen.Select(Windows, How, (windows, how) => $"average copper of her mob {windows}, from at least 5 animals, {how} umol/L"),
        Gen.Select(How, Windows, (how, windows) => $"{how} of her mob with score {windows} at least 3.5, from at least 1 animal"),
        OneOf("running with bull", "not running with bull", "not \"running with bull\" in the last 35 days", "\"source herd\" is one of \"A and B\", C", "\"source herd\" is not recorded",
            "mature weight not in the top 12.5% of heifers", "tag is \"982 000\"", "tested is not 2026-02-01", "easy", "not easy"));

    private static readonly Gen<string> Demand = Gen.OneOf(
        Condition,
        Gen.Select(OneOf("any of", "all of", "none of", "at least 2 of"), Condition.Array[2, 4], (head, items) => head + string.Concat(items.Select(item => $"\n    - {item}"))));

    private static readonly Gen<string> Text = Gen.String[Gen.Char["abc xyz"], 0, 8].Select(text => $"\"{text}\"");

    private static readonly Gen<string> Agreed = Text.Select(text => $"  because {text}\n  agreed by \"vet\", \"farmer\" on 2026-06-14\n");

    private static readonly Gen<string> Layer = Gen.OneOf(
        Gen.Select(Demand, Agreed, (demand, agreed) => $"change \"0\"\n  needs {demand}\n{agreed}"),
        Gen.Select(OneOf("applies to cows", "applies to easy", "if not known pass", "on the day", "source \"s\""), Agreed, (line, agreed) => $"change \"0\"\n  {line}\n{agreed}"),
        Gen.Select(Demand, Agreed, (demand, agreed) => $"change \"p\"\n  {demand}\n  counts 0.5\n{agreed}"),
        Agreed.Select(agreed => $"waive \"0\" for \"12 \\\"A\\\"\"\n  until 2026-12-31\n{agreed}"));

    private static readonly Gen<string> Body = Gen.Select(
        OneOf("", "  applies to cows\n", "  applies to females\n", "  applies to easy\n"), Demand, OneOf("", "  on the day\n", "  if not known exclude\n"), Text,
        (applies, demand, more, because) => $"{applies}  needs {demand}\n{more}  because {because}\n");

    /// <summary>A change of the safety rule: stricter, besides, or none.</summary>
    private static readonly Gen<string> Safer = Gen.Select(
        OneOf("", "needs no heat in the last 35 days", "needs no heat or milk fever in the last 27 days", "needs any of\n    - no \"bull in\" ever\n    - no milk fever ever", "if not known exclude"), Agreed,
        (line, agreed) => line.Length == 0 ? "" : $"change \"s\"\n  {line}\n{agreed}");

    private const string Words = """
        measure copper in umol/L, molar mass 63.546, also Cu
        measure score on scale 0 to 1000
        measure weight in kg
        test BVD virus answers positive, negative
        test "check of womb" answers clean, "not seen" in the yards
        fact "source herd" is one of "A and B", C
        fact mature weight in kg
        fact tag is identity
        fact tested is date
        spell running with bull from "bull in" until dry-off
        records "somewhere"
          complete for "bull in", copper since 2024-06-01
        programme "P"
          collection on 2026-10-12
          transfer 8 days after collection, over 2 days
          date "turn of year" on 2026-12-31
          choose egg donors from cows, judged on collection, for looking only
          choose others from egg donors, judged from first transfer to "turn of year", for looking only

        """;

    /// <summary>A whole file.</summary>
    public static readonly Gen<string> File = Gen.Select(
        Condition.Where(condition => !condition.Contains("easy", StringComparison.Ordinal)), Body.Array[1, 4], Demand, Layer.Array[0, 3], Safer,
        (easy, rules, prefer, layers, safer) =>
            string.Concat(Events.Select(name => $"event {name}\n")) + Words + $"define easy\n  {easy}\n"
            + "rules for egg donors\n" + string.Concat(rules.Select((body, i) => $"rule \"{i}\"\n{body}"))
            + $"rules for others\nsafety rule \"s\"\n  needs no heat in the last 27 days\n  because \"b\"\nprefer \"p\"\n  {prefer}\n  counts 2.5\n  because \"b\"\n"
            + string.Concat(layers) + safer);

    private static Gen<string> OneOf(params string[] texts) => Gen.Int[0, texts.Length - 1].Select(place => texts[place]);
}
