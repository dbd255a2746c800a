namespace Byrelaw.Judging.Tests.Reference;

/// <summary>One animal on one day, in one of the two ways of looking at the days after the known day.</summary>
/// <param name="Animal">Her place.</param>
/// <param name="Day">The day of judging, "d".</param>
/// <param name="Strict">True: coverage stops at the known day. False: nothing more happens after it.</param>
public readonly record struct Moment(int Animal, int Day, bool Strict);

/// <summary>All that a condition can ask about a farm.</summary>
public sealed class Knowledge
{
    public Knowledge(Rulebook rulebook, PlainFarm farm, LocalDate? knownOn, IEnumerable<LocalDate> judged)
    {
        Rulebook = rulebook;
        Farm = new FarmAsRead(farm, rulebook.Vocabulary, rulebook.Records, knownOn);
        var ends = judged.ToList();
        var dates = Farm.Happenings.Select(row => row.Day)
            .Concat(Farm.MobResults.Select(row => row.Day))
            .Concat(Farm.Unread.Select(row => row.Day).OfType<int>())
            .Concat(Farm.Animals.Select(animal => animal.BornFirst).OfType<int>())
            .Concat(Farm.Animals.Select(animal => animal.ParityOn).OfType<int>())
            .Concat((rulebook.Records?.Complete ?? []).Select(complete => DayNumber.Of(complete.Since)))
            .Concat((rulebook.Programme?.Dates ?? []).Select(date => DayNumber.Of(date.Date)))
            .Concat(ends.Select(DayNumber.Of))
            .Append(Farm.Known);
        var dusk = Math.Max(Math.Max(Farm.Known, Farm.Animals.Select(animal => animal.ParityOn ?? 0).DefaultIfEmpty(0).Max()), ends.Select(date => DayNumber.Of(date.PlusYears(1))).DefaultIfEmpty(0).Max());
        Coverage = new CoverageReference(Farm, rulebook.Records, dates.Min() - 2, dusk, rulebook.Vocabulary.Calving);
        Anchors = new AnchorReference(Farm, Coverage);
        Where = new WhereReference(Farm, Coverage, rulebook.Records, rulebook.Vocabulary.MobMove);
        Spells = new SpellReference(Farm, Coverage, rulebook.Records, rulebook.Vocabulary);
        Windows = new WindowReference(Farm, Coverage, Anchors, Spells);
    }

    public Rulebook Rulebook { get; }

    public FarmAsRead Farm { get; }

    public CoverageReference Coverage { get; }

    public AnchorReference Anchors { get; }

    public WindowReference Windows { get; }

    public WhereReference Where { get; }

    public SpellReference Spells { get; }

    /// <summary>Named conditions already worked out: "each is evaluated once per animal".</summary>
    internal Dictionary<(int Define, Moment Moment), Byrelaw.Judging.Truths.Truth> Named { get; } = [];
}
