using Byrelaw.Judging.Criteria;
using Byrelaw.Judging.Explaining;
using Byrelaw.Judging.Lists;
using Kleene = Byrelaw.Judging.Truths.Kleene;

namespace Byrelaw.Judging.Tests.SideBySide;

/// <summary>
/// Cases of the table of answers, dealt by a script that somebody else wrote from the design's words and that shares no code with this project:
/// each rule one letter a day (T, F, ?), the judging days, and the answer with its two later days.
/// </summary>
public sealed class TableCasesTests
{
    private const int Day0 = 20_000;

    [Fact]
    public void Every_case_is_answered_as_the_script_of_another_hand_deals_it()
    {
        var cases = File.ReadLines(Repository.At("tests/Byrelaw.Judging.Tests/SideBySide/table-of-answers.csv")).Skip(1).ToList();
        cases.Count.ShouldBe(400);
        cases.Select(Wrong).OfType<string>().ShouldBeEmpty();
    }

    private static string? Wrong(string line)
    {
        var cells = line.Split(',');
        Criterion[] rules = [.. cells[0].Split('/').Select(days => new Written(days))];
        var days = new JudgingDays(Day0 + int.Parse(cells[1], CultureInfo.InvariantCulture), Day0 + int.Parse(cells[2], CultureInfo.InvariantCulture), Day0, Day0 + cells[0].IndexOf('/', StringComparison.Ordinal) - 1);
        if (rules.Length == 1)
        {
            days = days with { SpanLast = Day0 + cells[0].Length - 1 };
        }

        var concluder = new Concluder(rules, new ListCriterion(rules, rules.Length), days);
        var (answer, from, _, notBefore) = concluder.Conclude(0);
        var (t, u) = answer == Answer.Later ? (Of(from), Of(notBefore == int.MaxValue ? from : notBefore)) : ("", "");
        var (saidT, saidU) = answer == Answer.Later ? (cells[4], cells[5]) : ("", "");
        return (answer.ToString(), t, u) == (cells[3], saidT, saidU) ? null : $"{line}: {answer}, {t}, {u}";
    }

    private static string Of(int day) => day == int.MaxValue ? "" : (day - Day0).ToString(CultureInfo.InvariantCulture);

    private sealed class Written(string days) : Criterion
    {
        public override Kleene On(int animal, int day, ref int until, Notes? notes)
        {
            until = Math.Min(until, day);
            return days[day - Day0] switch { 'T' => Kleene.True, 'F' => Kleene.False, _ => Kleene.Unknown };
        }
    }
}
