using System.Reflection;
using Byrelaw.Language.Canonical;
using Byrelaw.Language.Rulebooks;
using Byrelaw.Language.Rulebooks.Conditions;
using Byrelaw.Language.Rulebooks.Words;
using Byrelaw.Testing.Conditions;

namespace Byrelaw.Language.Tests.Conditions;

/// <summary>A condition carries its parts: asked of every kind there is, so that a new one cannot forget a part.</summary>
public sealed class EveryKindTests
{
    private static readonly Rulebook Book = Rules.Good(EveryKind.Text);

    private static readonly Condition[] All =
    [
        .. Book.Rules.Select(rule => rule.Needs), .. Book.Rules.SelectMany(rule => rule.Needs.Items), .. Book.Defines.Select(define => define.Condition),
        new BrokenCondition { Span = Book.Rules[0].Span },
    ];

    [Fact]
    public void The_file_holds_every_kind_of_condition_and_of_window()
    {
        KindsOf<Condition>().Except(All.Select(condition => condition.GetType())).ShouldBeEmpty();
        KindsOf<Window>().Except(All.SelectMany(condition => condition.Windows).Select(window => window.GetType())).ShouldBeEmpty();
    }

    [Fact]
    public void A_condition_of_the_same_parts_is_the_same()
    {
        foreach (var condition in All)
        {
            var again = condition.With(new SameParts()).ShouldNotBeNull();
            Printed(again).ShouldBe(Printed(condition));
            again.Windows.Select(window => window.ToString()).ShouldBe(condition.Windows.Select(window => window.ToString()));
        }
    }

    [Fact]
    public void Every_part_that_a_kind_holds_is_asked_for()
    {
        foreach (var condition in All)
        {
            var asked = new Asking();
            condition.With(asked);
            var held = new List<object>();
            Hold(condition, held);
            held.Where(part => !asked.For.Contains(part)).ShouldBeEmpty(Printed(condition));
        }
    }

    [Fact]
    public void A_part_for_which_nothing_can_stand_leaves_no_condition()
    {
        foreach (var condition in All.Where(condition => condition is not BrokenCondition))
        {
            var parts = new ConditionParts(condition);
            (condition.With(new NoWords()) is null).ShouldBe(
                !parts.Kinds.IsEmpty || !parts.WindowKinds.IsEmpty || !parts.Facts.IsEmpty || condition is NamedCondition or ListCondition, Printed(condition));
        }
    }

    [Fact]
    public void Another_number_stands_where_it_was_asked_for_and_nowhere_else()
    {
        var seen = 0;
        foreach (var condition in All)
        {
            var parts = new ConditionParts(condition);
            foreach (var number in parts.Numbers)
            {
                var other = number.IsHigh ? number.Value + 1 : Math.Max(number.Value - 1, 0);
                var changed = condition.With(new OneNumber(number, other)).ShouldNotBeNull();
                new ConditionParts(changed).Numbers.Select(one => one.Value).ShouldBe(parts.Numbers.Select(one => one == number ? other : one.Value));
                Printed(changed).ShouldNotBe(Printed(condition));
                seen++;
            }
        }

        seen.ShouldBeGreaterThan(25);
    }

    [Fact]
    public void Every_kind_prints_reads_back_and_says_what_it_is_about()
    {
        var canonical = CanonicalText.Of(Book);
        CanonicalText.Of(Rules.Good(canonical)).ShouldBe(canonical);
        foreach (var condition in All.Where(condition => condition is not BrokenCondition))
        {
            condition.Subject.ShouldNotBeNullOrEmpty(condition.GetType().Name);
        }
    }

    private static string Printed(Condition condition) => CanonicalText.Of(condition);

    private static IEnumerable<Type> KindsOf<T>() =>
        typeof(T).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(T)) && type is { IsAbstract: false, IsPublic: true });

    /// <summary>The words, days and conditions that an object holds, through records and lists, but not those of a condition inside it.</summary>
    private static void Hold(object value, List<object> held)
    {
        foreach (var property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(property => property.GetIndexParameters().Length == 0))
        {
            Take(property.GetValue(value), held);
        }
    }

    private static void Take(object? value, List<object> held)
    {
        switch (value)
        {
            case Kind or Fact or Spell or Condition or DateReference:
                held.Add(value);
                break;
            case string:
                break;
            case System.Collections.IEnumerable many:
                foreach (var one in many)
                {
                    Take(one, held);
                }

                break;
            case Demand or Limit or Counted or Window:
                Hold(value, held);
                break;
        }
    }

    private sealed class SameParts : OtherParts;

    private sealed class NoWords : OtherParts
    {
        public override Kind? Kind(Kind kind) => null;

        public override Fact? Fact(Fact fact) => null;

        public override Spell? Spell(Spell spell) => null;

        public override NamedCondition? Define(NamedCondition named) => null;
    }

    private sealed class OneNumber(ConditionNumber number, double value) : OtherParts
    {
        public override Condition? Item(Condition item) => item;

        public override double Number(ConditionNumber asked) => asked == number ? value : asked.Value;
    }

    private sealed class Asking : OtherParts
    {
        public HashSet<object> For { get; } = [];

        public override Condition? Item(Condition item) => Asked(item);

        public override Kind? Kind(Kind kind) => Asked(kind);

        public override Fact? Fact(Fact fact) => Asked(fact);

        public override Spell? Spell(Spell spell) => Asked(spell);

        public override DateReference Date(DateReference date) => Asked(date);

        private T Asked<T>(T part) where T : notnull
        {
            For.Add(part);
            return part;
        }
    }
}
