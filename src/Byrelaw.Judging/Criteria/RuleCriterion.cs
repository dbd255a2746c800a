namespace Byrelaw.Judging.Criteria;

/// <summary>
/// One rule for any animal and day: "(does not apply) or needs", then what <c>if not known</c> puts in
/// the place of a not known, then waivers.
/// </summary>
internal sealed class RuleCriterion(Rule rule, Criterion? appliesTo, Criterion needs, WaiverDays waivers) : Criterion
{
    // Whether the rule says just what its conditions say, of every animal.
    private readonly bool _isPlain = appliesTo is null && waivers.IsEmpty && !rule.IsBroken && rule.IfNotKnown == IfNotKnown.Ask;

    // A timeline asks all rules again whenever one of them may change; the others still know their answer.
    private int _animal = -1, _from, _until;
    private Kleene _answer;

    public Rule Rule => rule;

    public override Kleene On(int animal, int day, ref int until, Notes? notes)
    {
        if (animal != _animal || day < _from || day > _until)
        {
            (_animal, _from, _until) = (animal, day, int.MaxValue);
            if (_isPlain)
            {
                _answer = needs.On(animal, day, ref _until, null);
                until = Math.Min(until, _until);
                return _answer;
            }

            _answer = rule.IsBroken ? Kleene.Unknown : Replaced(Plain(animal, day, out _, ref _until, null));
            if (waivers.On(animal, day, ref _until) is not null && !rule.IsBroken)
            {
                _answer = Kleene.True;
            }
        }

        until = Math.Min(until, _until);
        return _answer;
    }

    public override void OnAll(int day, Span<Kleene> answers)
    {
        if (_isPlain)
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

    /// <summary>The waiver that holds for her on a day, if any.</summary>
    public Waiver? WaiverOn(int animal, int day)
    {
        var until = int.MaxValue;
        return rule.IsBroken ? null : waivers.On(animal, day, ref until);
    }
}
