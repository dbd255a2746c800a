using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.SideBySide;

/// <summary>Takes away from a case whatever its disagreement does not need, so that a person can read what is left.</summary>
public static class Smaller
{
    /// <summary>Tells one disagreement from another: what is said without numbers, names and dates.</summary>
    public static string Key(string difference) =>
        new([.. difference.Split('\n')[0].Where(c => !char.IsAsciiDigit(c)).Take(160)]);

    /// <summary>A smaller case with a disagreement.</summary>
    public static JudgingCase Of(JudgingCase one) => Of(one, smaller => Difference.Of(smaller) is not null);

    /// <summary>A smaller case that still fails.</summary>
    public static JudgingCase Of(JudgingCase one, Func<JudgingCase, bool> fails)
    {
        for (var isSmaller = true; isSmaller;)
        {
            isSmaller = false;
            foreach (var step in Steps(one))
            {
                var next = step with { Rulebook = GenRulebooks.AsBound(step.Rulebook) };
                if (Fails(next))
                {
                    one = next;
                    isSmaller = true;
                    break;
                }
            }
        }

        return one;

        bool Fails(JudgingCase next)
        {
            try
            {
                return fails(next);
            }
            catch (Exception e) when (e is IndexOutOfRangeException or ArgumentException or InvalidOperationException or NullReferenceException)
            {
                return false;
            }
        }
    }

    private static IEnumerable<JudgingCase> Steps(JudgingCase one)
    {
        var book = one.Rulebook;
        var farm = one.Farm;
        if (one.KnownOn is not null)
        {
            yield return one with { KnownOn = null };
        }

        if (one.On is not null)
        {
            yield return one with { On = null };
        }

        foreach (var choices in Without(book.Programme!.Choices).Where(choices => choices.Length > 0 && choices.All(choice => choice.OtherList is null || choices[0].List == choice.OtherList)))
        {
            yield return one with { Rulebook = book with { Programme = book.Programme with { Choices = choices } } };
        }

        foreach (var rules in Without(book.Rules))
        {
            yield return one with { Rulebook = book with { Rules = rules } };
        }

        foreach (var prefers in Without(book.Prefers))
        {
            yield return one with { Rulebook = book with { Prefers = prefers } };
        }

        foreach (var waivers in Without(book.Waivers))
        {
            yield return one with { Rulebook = book with { Waivers = waivers } };
        }

        foreach (var parts in Without(book.BrokenParts))
        {
            yield return one with { Rulebook = book with { BrokenParts = parts } };
        }

        foreach (var animals in Without(farm.Animals))
        {
            yield return one with { Farm = farm with { Animals = animals } };
        }

        foreach (var events in Without(farm.Events))
        {
            yield return one with { Farm = farm with { Events = events } };
        }

        for (var i = 0; i < book.Rules.Length; i++)
        {
            foreach (var rule in SmallerRules(book.Rules[i], book))
            {
                yield return one with { Rulebook = book with { Rules = book.Rules.SetItem(i, rule) } };
            }
        }

        for (var i = 0; i < book.Prefers.Length; i++)
        {
            foreach (var condition in SmallerConditions(book.Prefers[i].Condition, book))
            {
                yield return one with { Rulebook = book with { Prefers = book.Prefers.SetItem(i, book.Prefers[i] with { Condition = condition }) } };
            }
        }

        for (var i = 0; i < book.Records!.Complete.Length; i++)
        {
            foreach (var kinds in Without(book.Records.Complete[i].Kinds).Where(kinds => kinds.Length > 0))
            {
                yield return one with { Rulebook = book with { Records = book.Records with { Complete = book.Records.Complete.SetItem(i, book.Records.Complete[i] with { Kinds = kinds }) } } };
            }
        }

        foreach (var complete in Without(book.Records.Complete))
        {
            yield return one with { Rulebook = book with { Records = book.Records with { Complete = complete } } };
        }

        for (var i = 0; i < farm.Animals.Length; i++)
        {
            foreach (var row in SmallerAnimals(farm.Animals[i]))
            {
                yield return one with { Farm = farm with { Animals = farm.Animals.SetItem(i, row) } };
            }
        }

        for (var i = 0; i < farm.Events.Length; i++)
        {
            if (farm.Events[i].Recorded.Length > 0)
            {
                yield return one with { Farm = farm with { Events = farm.Events.SetItem(i, farm.Events[i] with { Recorded = "" }) } };
            }
        }
    }

    private static IEnumerable<AnimalRow> SmallerAnimals(AnimalRow row)
    {
        if (row.Mob.Length > 0)
        {
            yield return row with { Mob = "" };
        }

        if (row.Parity.Length > 0)
        {
            yield return row with { Parity = "" };
        }

        for (var i = 0; i < row.Facts.Length; i++)
        {
            if (row.Facts[i].Length > 0)
            {
                yield return row with { Facts = row.Facts.SetItem(i, "") };
            }
        }
    }

    private static IEnumerable<Rule> SmallerRules(Rule rule, Rulebook book)
    {
        if (rule.IsSafety)
        {
            yield return rule with { IsSafety = false };
        }

        if (rule.OnTheDay)
        {
            yield return rule with { OnTheDay = false };
        }

        if (rule.Audience != Audience.Everyone)
        {
            yield return rule with { Audience = Audience.Everyone, AppliesTo = null };
        }

        if (rule.IfNotKnown != IfNotKnown.Ask)
        {
            yield return rule with { IfNotKnown = IfNotKnown.Ask };
        }

        foreach (var needs in SmallerConditions(rule.Needs, book))
        {
            yield return rule with { Needs = needs };
        }
    }

    private static IEnumerable<Condition> SmallerConditions(Condition condition, Rulebook book)
    {
        switch (condition)
        {
            case NamedCondition named:
                yield return book.Defines[named.Index].Condition;
                break;
            case ListCondition list:
                foreach (var item in list.Items)
                {
                    yield return item;
                }

                foreach (var items in Without(list.Items).Where(items => items.Length >= Math.Max(1, list.Count)))
                {
                    yield return list with { Items = items };
                }

                break;
            case CountCondition count:
                foreach (var windows in Without(count.Windows).Where(windows => windows.Length > 0))
                {
                    yield return count with { Windows = windows };
                }

                foreach (var counted in Without(count.Counted).Where(counted => counted.Length > 0))
                {
                    yield return count with { Counted = counted };
                }

                break;
            case MeasuredCondition measured:
                foreach (var windows in Without(measured.Windows))
                {
                    yield return measured with { Windows = windows };
                }

                break;
            case TestCondition test:
                foreach (var windows in Without(test.Windows))
                {
                    yield return test with { Windows = windows };
                }

                break;
            case MobMeasuredCondition mob:
                foreach (var windows in Without(mob.Windows))
                {
                    yield return mob with { Windows = windows };
                }

                break;
            case MobCountCondition mob:
                foreach (var windows in Without(mob.Windows))
                {
                    yield return mob with { Windows = windows };
                }

                break;
            case SpellCondition spell:
                foreach (var windows in Without(spell.Windows))
                {
                    yield return spell with { Windows = windows };
                }

                break;
        }
    }

    private static IEnumerable<ImmutableArray<T>> Without<T>(ImmutableArray<T> all)
    {
        if (all.Length > 4)
        {
            yield return all.RemoveRange(0, all.Length / 2);
            yield return all.RemoveRange(all.Length / 2, all.Length - (all.Length / 2));
        }

        for (var i = all.Length - 1; i >= 0; i--)
        {
            yield return all.RemoveAt(i);
        }
    }
}
