using System.Collections.Immutable;
using Byrelaw.Language.Units;
using NodaTime;

namespace Byrelaw.Records.Tests.Support;

/// <summary>A small vocabulary of the farm, built without reading rule files.</summary>
internal static class Words
{
    private static readonly List<Kind> Kinds = [];
    private static readonly List<Fact> Facts = [];

    public static readonly EventKind Mob = Event("mob", isMobMove: true);
    public static readonly EventKind Calving = Event("calving", also: "calved", notBefore: new TimeLength(15, TimeUnit.Months));
    public static readonly EventKind Heat = Event("heat", also: "bulling");
    public static readonly EventKind Mating = Event("mating", also: "service", details: new EntryDetail("sire", default) { Type = FactType.Text });
    public static readonly EventKind Mastitis = Event("mastitis");
    public static readonly EventKind Purchase = Event("purchase", effect: HerdEffect.Joins);
    public static readonly EventKind Sale = Event("sale", effect: HerdEffect.Leaves);
    public static readonly EventKind Death = Event("death", effect: HerdEffect.Leaves);
    public static readonly EventKind BullIn = Event("bull in");
    public static readonly EventKind BullOut = Event("bull out");
    public static readonly MeasureKind Copper = Measure("serum copper", "umol/L", molarMass: 63.546);
    public static readonly MeasureKind Condition = Measure("body condition", null, scale: new Scale(1, 10));
    public static readonly MeasureKind Weight = Measure("weight", "kg");
    public static readonly MeasureKind Zinc = Measure("serum zinc", "umol/L");
    public static readonly MeasureKind Temperature = Measure("rectal temperature", "degC");
    public static readonly TestKind Virus = Test("BVD virus", "positive", "negative");
    public static readonly TestKind Pregnancy = Test("pregnancy test", "pregnant", "empty");

    public static readonly Fact Breed = Fact("breed", FactType.OneOf, values: ["Friesian", "Jersey", "crossbred"]);
    public static readonly Fact Index = Fact("breeding index", FactType.Number);
    public static readonly Fact MatureWeight = Fact("mature weight", FactType.Amount, unit: "kg");
    public static readonly Fact DamDate = Fact("dam genomic date", FactType.Date);
    public static readonly Fact Identity = Fact("official identity", FactType.Identity, also: "official id");
    public static readonly Fact Line = Fact("cow line", FactType.Text);

    public static readonly Vocabulary Vocabulary = new([.. Kinds], [.. Facts], [new Spell("running with bull", BullIn, BullOut, default)]);

    /// <summary>A records block: these kinds are complete since a day.</summary>
    public static RecordKeeping Keeping(string? upTo = null, string[]? leaveOut = null, params (Kind Kind, string Since)[] complete) => new(
        "records", upTo is null ? null : Date(upTo),
        [.. complete.Select(part => new Completeness([part.Kind], Date(part.Since), default))],
        [.. (leaveOut ?? []).Select(word => new LeftOut(word, null, default))], default);

    public static LocalDate Date(string iso) => NodaTime.Text.LocalDatePattern.Iso.Parse(iso).Value;

    private static EventKind Event(
        string name, string? also = null, TimeLength? notBefore = null, HerdEffect effect = HerdEffect.None, bool isMobMove = false, params EntryDetail[] details) =>
        Add(new EventKind(name, Also(also), default) { Id = Kinds.Count, Effect = effect, NotBeforeAge = notBefore, IsMobMove = isMobMove, Details = [.. details] });

    private static MeasureKind Measure(string name, string? unit, Scale? scale = null, double? molarMass = null) =>
        Add(new MeasureKind(name, [], default) { Id = Kinds.Count, Unit = unit is null ? null : UnitTable.Find(unit), Scale = scale, MolarMass = molarMass });

    private static TestKind Test(string name, params string[] answers) =>
        Add(new TestKind(name, [], default) { Id = Kinds.Count, Answers = [.. answers] });

    private static Fact Fact(string name, FactType type, string[]? values = null, string? unit = null, string? also = null)
    {
        var fact = new Fact(name, Also(also), default) { Id = Facts.Count, Type = type, Values = [.. values ?? []], Unit = unit is null ? null : UnitTable.Find(unit) };
        Facts.Add(fact);
        return fact;
    }

    private static ImmutableArray<string> Also(string? name) => name is null ? [] : [name];

    private static TKind Add<TKind>(TKind kind)
        where TKind : Kind
    {
        Kinds.Add(kind);
        return kind;
    }
}
