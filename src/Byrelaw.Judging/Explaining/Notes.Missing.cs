namespace Byrelaw.Judging.Explaining;

/// <summary>The part of the notes that says what is missing.</summary>
internal sealed partial class Notes
{
    /// <summary>Nothing in these days, and nobody says that nothing happened.</summary>
    public void NotKept(int kind, int from, int to)
    {
        NotKept(MissingReason.NotKept, kind, from, to);

        Unreadable(animal, kind, from, to);
    }

    /// <summary>It is not on record whether it ever happened.</summary>
    public void NeverRecorded(int kind, int day)
    {
        NotKept(MissingReason.NeverRecorded, kind, Day.Start, day);

        Unreadable(animal, kind, Day.Start, day);
    }

    private void NotKept(MissingReason reason, int kind, int from, int to)
    {
        if (days.Coverage.IsKept(animal, kind, from, to, strict: false))
        {
            return;
        }

        if (IsForWantOfHerBirth(kind, from, to))
        {
            FactMissing(animal, "born", isUnreadable: false);
        }
        else
        {
            AddMissing(reason, kind, from, to, SettledBy.Yards);
        }
    }

    /// <summary>
    /// The farm keeps these records since a day; only the days before it are open, and those only because nobody wrote down when she was born:
    /// of one born since then they would not count.
    /// </summary>
    private bool IsForWantOfHerBirth(int kind, int from, int to)
    {
        var coverage = days.Coverage;
        var since = coverage.Since[kind];
        return coverage.NeededFrom[kind][animal] <= Day.Start && coverage.Joined[animal] <= since && from < since && since <= to
            && coverage.IsKept(animal, kind, since, to, strict: false);
    }

    /// <summary>No result in these days.</summary>
    public void NoResult(int kind, int from, int to) => AddMissing(MissingReason.NoResult, kind, from, to, ByWhom(kind));

    /// <summary>A result that is there, and does not say.</summary>
    public void Pending(int kind, int place)
    {
        var run = days.Herd.Runs[kind];
        var isVague = run.Low.Length > 0 && (double.IsFinite(run.Low[place]) || double.IsFinite(run.High[place]));
        AddMissing(
            isVague ? MissingReason.ResultTooVague : MissingReason.ResultPending, kind,
            run.Days[place], run.Days[place], SettledBy.LaboratoryOrTime, run.Lines[place]);
    }

    /// <summary>The same of a result of her mob: only that one settles it, and no sample of somebody else.</summary>
    /// <param name="kind">The measure.</param>
    /// <param name="result">The result; of the mob itself where it is no animal's.</param>
    /// <param name="mob">Which mob.</param>
    public void Pending(int kind, in MobResult result, int mob)
    {
        var date = Day.Date(result.Day);
        AddMissing(new Missing(result.IsPending ? MissingReason.ResultPending : MissingReason.ResultTooVague, days.Herd.Vocabulary.ById[kind].Declaration.Name, date, date, SettledBy.LaboratoryOrTime, result.Line)
        {
            Whose = result.Animal == animal ? "" : result.Animal == MobResult.NoAnimal ? $"mob:{days.Herd.Mobs.Names[mob]}" : days.Herd.Numbers[result.Animal],
        });
    }

    /// <summary>Rows that could not be read and may be of this kind in these days.</summary>
    public void Unreadable(int animalPlace, int kind, int from, int to)
    {
        if (!days.Coverage.HasGaps[kind])
        {
            return;
        }

        // Before her birth, or the age at which it can happen, no row can have been hers but one that surely is.
        var needed = Math.Max(from, days.Coverage.NeededFrom[kind][animalPlace]);
        foreach (var gap in days.Coverage.Gaps)
        {
            if ((gap.Kind == kind || gap.Kind < 0) && (gap.Animal == animalPlace || gap.Animal < 0) && (gap.IsOnRecord ? from : needed) is var first && first <= to && gap.From <= to && gap.To >= first)
            {
                Unreadable(gap, kind);
            }
        }
    }

    /// <summary>One row that could not be read.</summary>
    public void Unreadable(in Gap gap, int kind) =>
        AddMissing(gap.IsLostStart ? MissingReason.StartNotOnRecord : gap.IsHint ? MissingReason.ToldBeside : IsOfDetails(gap) ? MissingReason.DetailNotKnown : MissingReason.UnreadableRow, kind, gap.From, gap.To, SettledBy.Yards, gap.Line);

    /// <summary>Whether the row can be read and only its details do not say whether it is meant: then it is no gap of the kind itself.</summary>
    private bool IsOfDetails(Gap gap) =>
        gap.Kind >= 0 && days.Herd.Vocabulary.ById[gap.Kind].Filter is { } filter
        && !Array.Exists(days.Coverage.Gaps, other => other.Kind == filter.Of.Id && other.Line == gap.Line && other.Animal == gap.Animal);

    /// <summary>A fact of hers that is blank or could not be read.</summary>
    public void FactMissing(int animalPlace, string fact, bool isUnreadable) => AddMissing(new Missing(
        isUnreadable ? MissingReason.FactUnreadable : MissingReason.FactMissing, fact, null, null, SettledBy.Yards,
        isUnreadable ? days.Herd.AnimalLines[animalPlace] : 0));

    /// <summary>What her value means for a condition whose file does not know it.</summary>
    public void ValueNotForeseen(string fact) => AddMissing(new Missing(MissingReason.ValueNotForeseen, fact, null, null, SettledBy.Yards));

    public void MobNotKnown() => AddMissing(new Missing(
        MissingReason.MobNotKnown, days.Herd.Vocabulary.MobMove.Name, null, null, SettledBy.Yards));

    /// <summary>In which mob she was is not on record, or nobody says that all moves are.</summary>
    public void WhichMob(int animalPlace, int day)
    {
        var move = days.Herd.Vocabulary.MobMove.Id;
        if (days.Coverage.IsKept(animalPlace, move, day, day, strict: false))
        {
            MobNotKnown();
        }
        else
        {
            NotKept(move, day, day);
        }
    }

    /// <summary>Whether a male that may be a bull was with her.</summary>
    public void WhatRuns(int male, bool isMobInDoubt) => AddMissing(new Missing(
        isMobInDoubt ? MissingReason.BullsMobNotKnown : MissingReason.MayBeABull, days.Herd.Numbers[male], null, null, SettledBy.Yards));

    /// <summary>Whether the bull that a row puts in with another of her mob was with her too.</summary>
    public void WhoseBull(int mate) => AddMissing(new Missing(MissingReason.BullsMobNotKnown, $"the bull put in with {days.Herd.Numbers[mate]}", null, null, SettledBy.Yards));

    public void WhoHasNoNumber() => AddMissing(new Missing(MissingReason.MayBeABull, "an animal without a number", null, null, SettledBy.Yards));

    /// <summary>One that a row moves to her mob, and that nobody listed.</summary>
    public void WhoIsNotListed(int line) => AddMissing(new Missing(MissingReason.MayBeABull, "an animal that is not in animals.csv", null, null, SettledBy.Yards, line));

    public void TooFewOfTheMob(int kind, int from, int to, int needed) =>
        AddMissing(MissingReason.TooFewOfTheMob, kind, from, to, ByWhom(kind), 0, needed);

    public void HerdValuesMissing(string fact) => AddMissing(new Missing(
        MissingReason.HerdValuesMissing, fact, null, null, SettledBy.Yards));

    private SettledBy ByWhom(int kind) => days.Herd.Vocabulary.ById[kind] switch
    {
        MeasureKind { InTheYards: false } or TestKind { InTheYards: false } => SettledBy.LaboratoryOrTime,
        _ => SettledBy.Yards,
    };

    private void AddMissing(MissingReason reason, int kind, int from, int to, SettledBy settledBy, int line = 0, int needed = 0) =>
        AddMissing(new Missing(reason, days.Herd.Vocabulary.ById[kind].Declaration.Name, DateOrNull(from), DateOrNull(to), settledBy, line, needed)
        {
            // What the farm keeps, or what a row that cannot be read says, is the same with a filter or without.
            Filter = reason is MissingReason.NoResult or MissingReason.NeverRecorded or MissingReason.DetailNotKnown or MissingReason.TooFewOfTheMob && days.Herd.Vocabulary.ById[kind].Filter is { } filter ? filter.Text : "",
        });

    private void AddMissing(Missing missing)
    {
        if (!_missing.Contains(missing))
        {
            _missing.Add(missing);
        }
    }

    private static LocalDate? DateOrNull(int day) => day is <= Day.Start or >= Day.End ? null : Day.Date(day);
}
