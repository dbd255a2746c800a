namespace Byrelaw.Judging.Criteria;

/// <summary><c>latest BVD virus is negative</c>.</summary>
internal sealed class TestCriterion(HerdDays days, TestCondition condition, WindowSet windows)
    : LookupCriterion(days, condition, condition.Test, windows)
{
    protected override bool IsQuick => Groups is null;

    protected override Kleene Look(int animal, int day, in WindowSet.Reading reading, Bounds bounds, ref int until, Notes? notes) =>
        Latest(animal, bounds, notes);

    protected override Truth TruthOf(int animal, int place, ref bool pending, Notes? notes)
    {
        var answer = Run.Answers[place];
        if (answer == KindRun.NotKnown)
        {
            pending = true;
            notes?.Pending(KindId, place);
            return Truth.Unknown;
        }

        return condition.Answers.Contains(answer) != condition.IsNot ? Truth.True : Truth.False;
    }

    protected override bool MayBeBad(int animal, int from, int to)
    {
        for (var place = Groups?.Last(animal, from, to) ?? -1; place >= 0; place = Groups!.Last(animal, from, to, place))
        {
            if (TruthOf(Groups!.AnswerOf(place)) != Truth.True)
            {
                return true;
            }
        }

        return false;
    }

    protected override int AmongGroups(int animal, int from, int to, ref Truth truth, Notes? notes)
    {
        var (own, last) = (truth, Day.Start);
        for (var place = Groups?.Last(animal, from, to) ?? -1; place >= 0; place = Groups!.Last(animal, from, to, place))
        {
            var other = TruthOf(Groups!.AnswerOf(place));
            if (own != Truth.Unknown && other != own)
            {
                truth = Truth.Unknown;
                last = Math.Max(last, Groups.DayOf(place));
                notes?.Row(KindId, Groups.DayOf(place), Groups.LineOf(place), Groups.AnswerOf(place) == KindRun.NotKnown ? null : condition.Test.Answers[Groups.AnswerOf(place)]);
            }
        }

        return last;
    }

    private Truth TruthOf(byte answer) => answer == KindRun.NotKnown ? Truth.Unknown : condition.Answers.Contains(answer) != condition.IsNot ? Truth.True : Truth.False;

    protected override void WriteFound(int animal, int first, int last, Notes? notes)
    {
        if (notes is null)
        {
            return;
        }

        var answers = ImmutableArray.CreateBuilder<string?>(last - first + 1);
        for (var i = first; i <= last; i++)
        {
            answers.Add(Run.Answers[i] == KindRun.NotKnown ? null : condition.Test.Answers[Run.Answers[i]]);
        }

        notes.Answers(answers.ToImmutable(), Run.Days[last]);
    }
}
