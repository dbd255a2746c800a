using Byrelaw.Records.Reading;

namespace Byrelaw.Judging.Verdicts;

/// <summary>A programme's lists, judged.</summary>
/// <param name="Rulebook">The rules, as they stood on the day of knowledge.</param>
/// <param name="Herd">The records.</param>
/// <param name="KnownOn">The day as known on which it was judged; null for today's knowledge.</param>
/// <param name="Lists">In the programme's order.</param>
public sealed record Draft(Rulebook Rulebook, Herd Herd, LocalDate? KnownOn, ImmutableArray<ListJudgement> Lists);

/// <summary>One list, judged.</summary>
/// <param name="Choice">What the programme asks for, with the judging days used.</param>
/// <param name="BrokenParts">Lines that may have been rules of this list and could not be read: nobody is Ready.</param>
/// <param name="Animals">Sorted by number.</param>
/// <param name="Unknown">Animal numbers named in the programme that are not in the records.</param>
public sealed record ListJudgement(
    Choice Choice, ImmutableArray<BrokenPart> BrokenParts, ImmutableArray<AnimalJudgement> Animals, ImmutableArray<string> Unknown)
{
    /// <summary>Which session's days it is judged on, from 1; null where that was not asked, or the days are others.</summary>
    public int? Session { get; init; }

    /// <summary>What is planned of its animals before its days, and taken as done: collections in the sessions before. It is not on record.</summary>
    public ImmutableArray<SupposedRow> Planned { get; init; } = [];

    /// <summary>The records with what is planned; null where nothing is.</summary>
    public Herd? AsPlanned { get; init; }

    /// <summary>How many have an answer.</summary>
    public int Count(Answer answer)
    {
        var count = 0;
        foreach (var animal in Animals)
        {
            if (animal.Answer == answer)
            {
                count++;
            }
        }

        return count;
    }

    /// <summary>Whether a rule of the list could not be read.</summary>
    public bool IsBroken => !BrokenParts.IsEmpty || (!Animals.IsEmpty && Animals[0].Rules.Any(rule => rule.Answer == RuleAnswer.Broken || rule.Rule?.IsBroken == true));
}
