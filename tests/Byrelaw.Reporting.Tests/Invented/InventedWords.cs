using Byrelaw.Language.Units;

namespace Byrelaw.Reporting.Tests.Invented;

/// <summary>A small farm's words. Every name that is shown goes through <c>alter</c>, so that a test can make all of them hostile; the plain ones stand beside them, for a page draws calvings and heats by their names.</summary>
internal sealed class InventedWords
{
    private static readonly Unit PerKilogram = new("umol/kg", Quantity.MolesPerMass, 1e-6);
    private readonly List<Kind> _kinds = [];
    private readonly SourceSpan _declared;

    public InventedWords(Func<string, string> alter)
    {
        _declared = new SourceSpan(new SourceFile(alter("vocabulary.byre"), "event calving\n"), 0, 5);
        EventKind Event(string name, bool moves = false, HerdEffect effect = HerdEffect.None) =>
            Add(new EventKind(alter(name), [name], _declared) { Id = _kinds.Count, IsMobMove = moves, Effect = effect });
        Calving = Event("calving");
        Heat = Event("heat");
        Mating = Event("mating");
        Transfer = Event("transfer");
        Metritis = Event("metritis");
        Sale = Event("sale", effect: HerdEffect.Leaves);
        Event("mob", moves: true);
        PregnancyTest = Add(new TestKind(alter("pregnancy test"), ["pregnancy test"], _declared) { Id = _kinds.Count, Answers = [alter("pregnant"), alter("empty")], InTheYards = true });
        UterineCheck = Add(new TestKind(alter("uterine check"), [], _declared) { Id = _kinds.Count, Answers = [alter("clean"), alter("discharge")], InTheYards = true });
        LiverCopper = Add(new MeasureKind(alter("liver copper"), [], _declared) { Id = _kinds.Count, Unit = PerKilogram });
        BodyCondition = Add(new MeasureKind(alter("body condition"), [], _declared) { Id = _kinds.Count, Scale = new Scale(1, 10), InTheYards = true });
        Identity = new Fact(alter("official identity"), [], _declared) { Id = 0, Type = FactType.Identity };
        Vocabulary = new Vocabulary([.. _kinds], [Identity], []);
    }

    public Vocabulary Vocabulary { get; }
    public EventKind Calving { get; }
    public EventKind Heat { get; }
    public EventKind Mating { get; }
    public EventKind Transfer { get; }
    public EventKind Metritis { get; }
    public EventKind Sale { get; }
    public TestKind PregnancyTest { get; }
    public TestKind UterineCheck { get; }
    public MeasureKind LiverCopper { get; }
    public MeasureKind BodyCondition { get; }
    public Fact Identity { get; }

    private T Add<T>(T kind)
        where T : Kind
    {
        _kinds.Add(kind);
        return kind;
    }
}
