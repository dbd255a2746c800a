using Byrelaw.Language.Sources;
using Byrelaw.Language.Units;

namespace Byrelaw.Judging.Tests.Generators;

/// <summary>The one vocabulary of all random rulebooks and herds.</summary>
public static class Words
{
    public static readonly SourceSpan Nowhere = new(new SourceFile("case.byre", ""), 0, 0);

    public static readonly EventKind Mob = Event(0, "mob") with { IsMobMove = true };
    public static readonly EventKind Calving = Event(1, "calving") with { NotBeforeAge = new TimeLength(15, TimeUnit.Months), Details = [Step()] };
    public static readonly EventKind Heat = Event(2, "heat") with { Details = [OneOf("cause", ["own", "treatment"]) with { BlankIs = 0 }] };
    public static readonly EventKind Mating = Event(3, "mating") with { Details = [OneOf("method", ["natural", "inseminated"]), Text("sire")] };
    public static readonly EventKind Mastitis = Event(4, "mastitis") with { Details = [Step()] };
    public static readonly EventKind Purchase = Event(5, "purchase") with { Effect = HerdEffect.Joins };
    public static readonly EventKind Sale = Event(6, "sale") with { Effect = HerdEffect.Leaves };
    public static readonly EventKind Death = Event(7, "death") with { Effect = HerdEffect.Leaves, IsForGood = true };
    public static readonly EventKind BullIn = Event(8, "bull in");
    public static readonly EventKind BullOut = Event(9, "bull out");
    public static readonly MeasureKind Weight = new("weight", [], Nowhere) { Id = 10, Unit = UnitTable.Find("kg"), InTheYards = true, Details = [Text("sire"), Step()] };
    public static readonly MeasureKind BodyCondition = new("body condition", [], Nowhere) { Id = 11, Scale = new Scale(1, 10), InTheYards = true };
    public static readonly MeasureKind Copper = new("serum copper", [], Nowhere) { Id = 12, Unit = UnitTable.Find("umol/L"), MolarMass = 63.546, Details = [Text("sire")] };
    public static readonly TestKind Virus = new("BVD virus", [], Nowhere) { Id = 13, Answers = ["positive", "negative", "suspect"], Details = [OneOf("method", ["ear", "blood"]) with { BlankIs = 1 }] };
    public static readonly TestKind Uterus = new("uterine check", [], Nowhere) { Id = 14, Answers = ["clean", "discharge"], InTheYards = true };

    public static readonly Fact Breed = new("breed", [], Nowhere) { Id = 0, Type = FactType.OneOf, Values = ["Friesian", "Jersey", "crossbred"] };
    public static readonly Fact Index = new("breeding index", [], Nowhere) { Id = 1, Type = FactType.Number };
    public static readonly Fact MatureWeight = new("mature weight", [], Nowhere) { Id = 2, Type = FactType.Amount, Unit = UnitTable.Find("kg") };
    public static readonly Fact DamTested = new("dam genomic date", [], Nowhere) { Id = 3, Type = FactType.Date };
    public static readonly Fact Identity = new("official identity", [], Nowhere) { Id = 4, Type = FactType.Identity };
    public static readonly Fact Temper = new("temper", [], Nowhere) { Id = 5, Type = FactType.Text };

    public static readonly Spell WithBull = new("running with bull", BullIn, BullOut, Nowhere) { WithMaleFrom = new TimeLength(6, TimeUnit.Months) };

    public static readonly Vocabulary Vocabulary = new(
        [Mob, Calving, Heat, Mating, Mastitis, Purchase, Sale, Death, BullIn, BullOut, Weight, BodyCondition, Copper, Virus, Uterus],
        [Breed, Index, MatureWeight, DamTested, Identity, Temper],
        [WithBull]);

    /// <summary>Events without a value.</summary>
    public static readonly ImmutableArray<EventKind> PlainEvents = [Calving, Heat, Mating, Mastitis, BullIn, BullOut, Purchase, Sale, Death];

    public static readonly ImmutableArray<MeasureKind> Measures = [Weight, BodyCondition, Copper];

    public static readonly ImmutableArray<TestKind> Tests = [Virus, Uterus];

    private static EntryDetail OneOf(string name, ImmutableArray<string> values) => new(name, Nowhere) { Type = FactType.OneOf, Values = values };

    private static EntryDetail Text(string name) => new(name, Nowhere) { Type = FactType.Text };

    private static EntryDetail Step() => new("step", Nowhere) { Type = FactType.Number };

    private static EventKind Event(int id, string name) => new(name, [], Nowhere) { Id = id };
}
