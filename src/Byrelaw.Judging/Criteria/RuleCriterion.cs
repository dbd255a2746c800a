namespace Byrelaw.Judging.Criteria;

/// <summary>
/// One rule for any animal and day: "(does not apply) or needs", then what <c>if not known</c> puts in
/// the place of a not known, then waivers.
/// </summary>
/// <param name="rule">The rule.</param>
/// <param name="appliesTo">Whom it is for; null for everyone.</param>
/// <param name="needs">What it asks.</param>
/// <param name="waivers">For whom it does not count.</param>
/// <param name="alsoOn">A day on which it must hold too, for every day before it: what is on record by then was so, whatever day is judged.</param>
internal sealed class RuleCriterion(Rule rule, Criterion? appliesTo, Criterion needs, WaiverDays waivers, int alsoOn = int.MinValue) : Criterion
{
    // Whether the rule says just what its conditions say, of every animal.
    private readonly bool _isPlain = appliesTo is null && waivers.IsEmpty && !rule.IsBroken && rule.IfNotKnown == IfNotKnown.Ask;

    // A timeline asks all rules again whenever one of them may change; the others still know their answer.
    private int _animal = -1, _from, _until;
    private Kleene _answer;
    private int _animalThen = -1;
    private Kleene _answerThen;

    public Rule Rule => rule;

    /// <summary>The day on which it must hold too, for every day before it; int.MinValue for none.</summary>
    public int AlsoOn => alsoOn;

    public override Kleene On(int animal, int day, ref int until, Notes? notes)
    {
        if (animal != _animal || day < _from || day > _until)
        {
            (_animal, _from, _until) = (animal, day, int.MaxValue);
            _answer = OnItself(animal, day, ref _until);
            if (day < alsoOn)
            {
                _until = Math.Min(_until, alsoOn - 1);
                _answer = _answer.IsSurelyFalse ? _answer : _answer & Then(animal);
            }
        }

        until = Math.Min(until, _until);
        return _answer;
    }

    /// <summary>The answer of a day by itself.</summary>
    public Kleene OnItself(int animal, int day, ref int until)
    {
        if (_isPlain)
        {
            return needs.On(animal, day, ref until, null);
        }

        if (rule.IsBroken)
        {
            return Kleene.Unknown;
        }

        var answer = Replaced(Plain(animal, day, out _, ref until, null));
        return waivers.On(animal, day, ref until) is null ? answer : Kleene.True;
    }

    public override void OnAll(int day, Span<Kleene> answers)
    {
        if (_isPlain && day >= alsoOn)
        {
            needs.OnAll(day, answers);
        }
        else
        {
            base.OnAll(day, answers);
        }
    }

    /// <summary>The answer before <c>if not known</c> and waivers.</summary>
    public Kleene Plain(int animal, int day, out Truth applies, ref int until, Notes? notes)
    {
        if (appliesTo is null)
        {
            applies = Truth.True;
            return needs.On(animal, day, ref until, notes);
        }

        var list = notes?.BeginList() ?? 0;
        notes?.BeginNot();
        var own = int.MaxValue;
        var applied = appliesTo.On(animal, day, ref own, notes);
        if (rule.Audience is not (Audience.Everyone or Audience.Named))
        {
            // A cow is never a heifer again; a heifer may calve, and the rule is hers no more.
            notes?.Node(applied.Assumed, isForGood: rule.Audience != Audience.Heifers);
        }

        notes?.CloseNot();
        applies = applied.Assumed;
        until = Math.Min(until, own);
        var answer = !applied;
        if (!answer.IsSurelyTrue || notes is not null)
        {
            answer |= needs.On(animal, day, ref until, notes);
        }

        notes?.CloseList(list, answer.Assumed, 1);
        return answer;
    }

    /// <summary>What <c>if not known</c> makes of an answer.</summary>
    public Kleene Replaced(Kleene answer) => rule.IfNotKnown switch
    {
        IfNotKnown.Pass => answer.Pass(),
        IfNotKnown.Exclude => answer.Exclude(),
        _ => answer,
    };

    /// <summary>Which of some days in a row shows why it answers as it does over all of them: the first that says so by itself, else the day on which it must hold too.</summary>
    public int DayThatShows(Truth truth, int animal, int first, int last)
    {
        for (var day = first; day <= last;)
        {
            var until = int.MaxValue;
            if (OnItself(animal, day, ref until).Assumed == truth)
            {
                return day;
            }

            day = until >= last ? last + 1 : Math.Max(until, day) + 1;
        }

        return first < alsoOn ? alsoOn : first;
    }

    /// <summary>The waiver that holds for her on a day, if any.</summary>
    public Waiver? WaiverOn(int animal, int day)
    {
        var until = int.MaxValue;
        return rule.IsBroken ? null : waivers.On(animal, day, ref until);
    }

    private Kleene Then(int animal)
    {
        if (animal != _animalThen)
        {
            var until = int.MaxValue;
            (_animalThen, _answerThen) = (animal, OnItself(animal, alsoOn, ref until));
        }

        return _answerThen;
    }
}
