using System.Globalization;
using Byrelaw.Judging.Verdicts;
using Byrelaw.Records.Reading;
using CsCheck;
using NodaTime.Text;

namespace Byrelaw.Checking.Tests.Examples;

/// <summary>A random animal is judged from a farm's files by a programme; written down as an example with that verdict, she comes out as expected.</summary>
public sealed class SideBySideTests
{
    private static readonly LocalDate Judged = new(2026, 10, 19);
    private static readonly string[] Kinds = ["calving", "heat", "mating", "lameness", "BVD virus", "body condition"];

    /// <param name="IsCow">Whether she has calved at all.</param>
    /// <param name="Rows">Kind, days before the judging day, and which result.</param>
    /// <param name="NotKept">Kinds by place.</param>
    /// <param name="Unrecorded">For how many days before the judging day nothing is recorded.</param>
    private sealed record Case(bool IsCow, (int Kind, int DaysAgo, int Result)[] Rows, int[] NotKept, int Unrecorded);

    private static readonly Gen<Case> Cases = Gen.Select(
        Gen.Bool,
        Gen.Select(Gen.Int[0, Kinds.Length - 1], Gen.OneOf(Gen.Int[0, 120], Gen.Int[29, 32], Gen.Int[55, 61], Gen.Int[119, 122]), Gen.Int[0, 2]).Array[0, 8],
        Gen.Int[0, Kinds.Length - 1].Array[0, 2],
        Gen.OneOf(Gen.Const(0), Gen.Int[1, 40]),
        (isCow, rows, notKept, unrecorded) => new Case(
            isCow, [.. rows.Select(row => (row.Item1, Math.Max(row.Item2, unrecorded), row.Item3)).Where(row => isCow || row.Item1 != 0)], notKept, unrecorded));

    [Fact]
    public void An_example_made_from_a_random_animals_own_verdict_comes_out_as_expected() => Cases.Hold(
        one =>
        {
            var example = ExampleOf(one);
            var failures = Tried.Failures(Tried.Examples(example));
            return failures.Length == 0 ? true : throw new Xunit.Sdk.XunitException($"{example}\n{failures}");
        },
        count: 300, oneByOne: true);

    private static string ExampleOf(Case one)
    {
        var text = new StringBuilder("example \"She\"\n");
        text.Append(one.IsCow ? "  cow born 2021-08-10\n" : "  heifer born 2021-08-10\n");
        text.Append(one.IsCow ? "  parity 2\n" : "");
        foreach (var row in one.Rows)
        {
            text.Append(CultureInfo.InvariantCulture, $"  {Kinds[row.Kind]} {Iso(Judged.PlusDays(-row.DaysAgo))} {ResultOf(row)}\n");
        }

        foreach (var kind in one.NotKept.Distinct())
        {
            text.Append(CultureInfo.InvariantCulture, $"  not kept {Kinds[kind]}\n");
        }

        text.Append(CultureInfo.InvariantCulture, $"  collection on {Iso(Judged)}\n  judged on {Iso(Judged)}\n  records to {Iso(Judged.PlusDays(-one.Unrecorded))}\n");
        foreach (var list in Verdict(one).Lists)
        {
            var animal = list.Animals.ShouldHaveSingleItem();
            foreach (var rule in animal.Rules.Where(rule => rule.Gate == Gate.None))
            {
                var missing = rule.Findings.Where(finding => finding.Decides).SelectMany(finding => finding.Missing).Select(missing => missing.Subject).Distinct().ToList();
                text.Append(CultureInfo.InvariantCulture, $"  expect \"{rule.Name}\" {WordsOf(rule.Answer)}{Day("until", rule.ChangesOn)}{Names(rule.Answer == RuleAnswer.NotKnown ? missing : [])}\n");
            }

            text.Append(CultureInfo.InvariantCulture, $"  expect {list.Choice.List} {WordsOf(animal.Answer)}{Day("from", animal.Answer == Answer.Later ? animal.ReadyFrom : null)}");
            text.Append(CultureInfo.InvariantCulture, $"{Day("not before", animal.NotBefore)}{Names(animal.Settle.Concat(animal.ThenAsk).Select(missing => missing.Subject).Distinct())}\n");
        }

        return text.ToString();
    }

    private static Draft Verdict(Case one)
    {
        var kept = Enumerable.Range(0, Kinds.Length).Except(one.NotKept).Select(kind => Kinds[kind]).ToList();
        var farm = $"""
            use "rules.byre"
            records "records"
              up to {Iso(Judged.PlusDays(-one.Unrecorded))}
              complete for {string.Join(", ", kept)} since 1990-01-01
            programme "P"
              collection on {Iso(Judged)}
              choose recipients from females, judged on {Iso(Judged)}, for looking only
              choose donors from females, judged on {Iso(Judged)}, for looking only
            """;
        var reading = RulebookReader.Read("farm.byre", new RuleFiles(("farm.byre", farm), ("rules.byre", Tried.Rules)))!;
        var animals = $"animal,born,sex,parity\nshe,2021-08-10,F,{(one.IsCow ? 2 : 0)}\n";
        var events = "date,animal,kind,value,unit\n" + string.Concat(one.Rows.Select(row => $"{Iso(Judged.PlusDays(-row.DaysAgo))},she,{Kinds[row.Kind]},{ResultOf(row)},\n"));
        var herd = HerdReader.Read(Encoding.UTF8.GetBytes(animals), Encoding.UTF8.GetBytes(events), reading.Rulebook.Vocabulary, reading.Rulebook.Records);
        herd.Problems.ShouldBeEmpty();
        return new Judge(reading.Rulebook, herd).JudgeAll();
    }

    private static string ResultOf((int Kind, int DaysAgo, int Result) row) => Kinds[row.Kind] switch
    {
        "BVD virus" => new[] { "negative", "positive", "pending" }[row.Result],
        "body condition" => new[] { "3.5", "4.5", "5.5" }[row.Result],
        _ => "",
    };

    private static string WordsOf(RuleAnswer answer) => answer switch
    {
        RuleAnswer.Met => "met",
        RuleAnswer.NotMet => "not met",
        RuleAnswer.DoesNotApply => "does not apply",
        _ => "not known",
    };

    private static string WordsOf(Answer answer) => answer switch
    {
        Answer.Ready => "ready",
        Answer.OnCourse => "on course",
        Answer.Later => "later",
        Answer.Ask => "ask",
        _ => "no",
    };

    private static string Day(string word, LocalDate? date) => date is { } day ? $", {word} {Iso(day)}" : "";

    private static string Names(IEnumerable<string> names) => names.Any() ? $", missing {string.Join(" and ", names)}" : "";

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);
}
