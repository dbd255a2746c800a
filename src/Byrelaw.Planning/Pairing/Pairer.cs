using Byrelaw.Language.Rulebooks.Conditions;
using Byrelaw.Planning.Sheets;

namespace Byrelaw.Planning.Pairing;

/// <summary>Pairs embryos and recipients on a day of transfer.</summary>
public static class Pairer
{
    /// <summary>The session whose days of transfer a day is one of; null for none.</summary>
    public static Session? SessionOn(Programme programme, LocalDate day) => Session.Of(programme).FirstOrDefault(session => session.FirstTransfer <= day && day <= session.FinalTransfer);

    /// <summary>Pairs them.</summary>
    /// <param name="rulebook">With a programme that draws up a list of recipients.</param>
    /// <param name="herd">Its records.</param>
    /// <param name="session">The session of the day.</param>
    /// <param name="asked">The day, and what is asked of it.</param>
    /// <param name="knownOn">As known on this day; null for today's knowledge.</param>
    public static DayOfTransfer Pair(Rulebook rulebook, Herd herd, Session session, PairingAsked asked, LocalDate? knownOn = null)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        ArgumentNullException.ThrowIfNull(herd);
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(asked);
        var rules = SessionsInTurn.RulesOf(rulebook, session);
        var choice = ProgrammeLists.Recipients(rules.Programme!) ?? throw new ArgumentException("The programme draws up no list of recipients.", nameof(rulebook));
        var judge = new Judge(rules, herd, knownOn);
        var list = judge.JudgeList(choice, asked.Day, asked.Day);
        var draft = new Draft(rules, herd, knownOn, [list]);
        var day = new DayOfTransfer(session, asked.Day, draft, InCalfOnDay.Of(judge, choice, asked.Day))
        {
            Short = NotWrittenDown(rules, herd, choice, asked.Day),
            IsBroken = list.IsBroken,
            Embryos = EmbryoToday.Of(herd.Embryos, asked),
        };
        if (day.IsBroken || !day.Short.IsEmpty)
        {
            return day;
        }

        var (fit, not) = new RecipientsToday(rules, judge, session, asked).Of(list);
        return Paired(day with { Out = not }, fit, new PairChance(rules, DryCows.On(judge, asked.Day)), asked);
    }

    private static DayOfTransfer Paired(DayOfTransfer day, ImmutableArray<Recipient> fit, PairChance chance, PairingAsked asked)
    {
        var (embryos, within) = (day.Embryos, day.Draft.Rulebook.Programme!.Aims.WithinDaysOfEmbryo);
        var worth = new PairWorth?[embryos.Length][];
        for (var one = 0; one < worth.Length; one++)
        {
            worth[one] = [.. fit.Select(recipient => PairRule.Common.All(rule => rule.Of(embryos[one], recipient.Day, within) == Truth.True) ? Worth(embryos[one], recipient) : (PairWorth?)null)];
        }

        var best = BestPairs.Of(worth, fit.Length);
        Pair[] pairs =
        [
            .. from one in Enumerable.Range(0, embryos.Length)
               let recipient = best.RecipientOf(one)
               where recipient >= 0
               orderby recipient
               let besides = best.Without(one)
               select new Pair(embryos[one], fit[recipient], worth[one][recipient]!.Value)
               {
                   Wanted = chance.Share(embryos[one], fit[recipient], chance.Goal),
                   Pregnant = chance.Share(embryos[one], fit[recipient], Stage.Pregnant),
                   Lost = besides.Lost,
                   NextBest = besides.Instead >= 0 ? embryos[besides.Instead] : null,
               },
        ];
        var (taken, used) = (pairs.Select(pair => pair.Recipient.Animal).ToHashSet(), pairs.Select(pair => pair.Embryo.Label).ToHashSet(StringComparer.Ordinal));
        return day with
        {
            Pairs = [.. pairs],
            Waiting = [.. fit.Where(recipient => !taken.Contains(recipient.Animal)).OrderBy(recipient => recipient.IsExaminedFirst).ThenByDescending(recipient => recipient.Judged.Score)],
            LeftOver = [.. embryos.Where(embryo => !used.Contains(embryo.Label)).Select(embryo => new LeftOver(embryo, NotMet(embryo)))],
            HasRates = chance.IsKnown,
            Goal = chance.Goal,
        };

        PairWorth Worth(EmbryoToday embryo, Recipient recipient) => new(
            0, embryo.IsFresh ? 1 : 0, asked.Earlier.GetValueOrDefault(embryo.Label) == recipient.Number ? 1 : 0, chance.Wanted(embryo, recipient), (long)Math.Round(recipient.Judged.Score * 1000));
    }

    private static ImmutableArray<(PairRule Rule, bool IsKnown)> NotMet(EmbryoToday embryo) =>
        [.. PairRule.Common.Where(rule => rule.IsOfEmbryo).Select(rule => (rule, Said: rule.Of(embryo, 0, 0))).Where(one => one.Said != Truth.True).Select(one => (one.rule, one.Said == Truth.False))];

    /// <summary>Kinds that any rule of the list looks at, and heats, of which not all is written down up to the day.</summary>
    private static ImmutableArray<ShortKind> NotWrittenDown(Rulebook rules, Herd herd, Choice choice, LocalDate day)
    {
        var looked = rules.Rules.Where(rule => rule.IsFor(choice.List)).SelectMany(rule => rule.Needs.Leaves(rules)).Select(leaf => new ConditionParts(leaf)).SelectMany(parts => parts.Kinds.Concat(parts.WindowKinds))
            .Select(kind => kind.Declaration).Concat(new[] { rules.Vocabulary.FindKind("heat"), rules.Vocabulary.FindKind("timed heat") }.OfType<Kind>());
        return [.. SafetyReach.Short(rules, herd, [choice.List], day).Concat(SafetyReach.Short(herd, looked, day)).DistinctBy(one => one.Kind.Id)];
    }
}
