using System.Text;
using Byrelaw.Language.Rulebooks.Plans;

namespace Byrelaw.Judging.Supposing;

/// <summary>A task whose last day contradicts a rule: an animal for which it is done on that day does not meet the rule on the day on which it is asked.</summary>
/// <param name="Task">The task.</param>
/// <param name="Due">Its day.</param>
/// <param name="Rule">The rule.</param>
/// <param name="JudgedOn">The first day on which the rule is asked.</param>
/// <param name="By">The last day that does.</param>
public sealed record TooLateTask(PlanTask Task, LocalDate Due, Rule Rule, LocalDate JudgedOn, LocalDate By)
{
    /// <summary>A rule that no day so long before it does is not about the task's day.</summary>
    private const int MostDays = 400;

    /// <summary>All of them, found with a made-up animal for which what the task settles happens on its last day.</summary>
    public static ImmutableArray<TooLateTask> Of(Rulebook rulebook)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        return rulebook.Programme is not { } programme ? [] :
        [
            .. from task in rulebook.Plans.Tasks
               where !task.IsNotNeeded
               let due = task.Due?.In(programme)
               where due is not null
               from kind in task.SettlesKinds.OfType<EventKind>()
               from choice in programme.Choices
               where choice.Use != ListUse.ForLookingOnly
               from rule in rulebook.Rules
               where rule.IsFor(choice.List) && !rule.IsBroken && !rule.OnTheDay && LooksAt(rule, kind, rulebook)
               let last = LastDay(rulebook, choice, rule, kind, due.Value)
               where last is not null
               select new TooLateTask(task, due.Value, rule, choice.JudgedFrom, last.Value),
        ];
    }

    private static bool LooksAt(Rule rule, EventKind kind, Rulebook rulebook) => rule.Needs.Leaves(rulebook).Exists(leaf => leaf switch
    {
        SpellCondition spell => spell.Spell.Until.Id == kind.Declaration.Id,
        CountCondition count => count.Counted.Any(one => one.Kind.Declaration.Id == kind.Declaration.Id),
        ApartCondition apart => apart.Counted.Any(one => one.Kind.Declaration.Id == kind.Declaration.Id),
        TimeSinceCondition since => since.Kinds.Any(one => one.Declaration.Id == kind.Declaration.Id),
        _ => false,
    });

    /// <summary>The last day that does, where the task's own does not; null where it does, or no day does.</summary>
    private static LocalDate? LastDay(Rulebook rulebook, Choice choice, Rule rule, EventKind kind, LocalDate due)
    {
        var (holds, not) = (due.PlusDays(-MostDays), due);
        if (Holds(due) || !Holds(holds))
        {
            return null;
        }

        while (Period.DaysBetween(holds, not) is > 1 and var days)
        {
            var middle = holds.PlusDays(days / 2);
            (holds, not) = Holds(middle) ? (middle, not) : (holds, middle);
        }

        return holds;

        bool Holds(LocalDate day) => MadeUp(rulebook, choice, kind, day).ChecksOf(choice).Of(rule.Name, 0, choice.JudgedFrom, choice.JudgedTo) == Truth.True;
    }

    /// <summary>One cow for which it happened on a day, and nothing else did; a spell that it ends began two years before. All of it is written down.</summary>
    private static Judge MadeUp(Rulebook rulebook, Choice choice, EventKind kind, LocalDate day)
    {
        var begun = day.PlusYears(-2);
        var events = new StringBuilder("date,animal,kind\n");
        foreach (var spell in rulebook.Vocabulary.Spells.Where(spell => spell.Until.Id == kind.Declaration.Id))
        {
            events.Append(System.Globalization.CultureInfo.InvariantCulture, $"{begun:uuuu-MM-dd},1,{spell.From.Name}\n");
        }

        events.Append(System.Globalization.CultureInfo.InvariantCulture, $"{day:uuuu-MM-dd},1,{kind.Declaration.Name}\n");
        var all = new Completeness([.. rulebook.Vocabulary.Kinds.OfType<EventKind>()], begun.PlusYears(-10), choice.Span);
        var reach = day > choice.JudgedTo ? day : choice.JudgedTo;
        var keeping = new RecordKeeping("", reach, [all], [], choice.Span);
        return new SupposedFarm(
            rulebook with { Records = keeping },
            ("animals.csv", Encoding.UTF8.GetBytes($"animal,born,sex\n1,{begun.PlusYears(-3):uuuu-MM-dd},F\n")), ("events.csv", Encoding.UTF8.GetBytes(events.ToString())))
            .Judge(new Supposition { Unless = _ => true });
    }
}
