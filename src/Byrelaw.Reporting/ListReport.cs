using Byrelaw.Planning.Naming;

namespace Byrelaw.Reporting;

/// <summary>One list of a draft, with what every page about it says of its days.</summary>
/// <param name="Draft">The whole draft.</param>
/// <param name="List">The list.</param>
public sealed record ListReport(Draft Draft, ListJudgement List)
{
    private readonly Lazy<ImmutableArray<Kind>> _kinds = new(() => [.. RuleKinds.Of(Draft.Rulebook, List.Choice.List)]);
    private readonly Lazy<ImmutableArray<EventKind>> _unwanted = new(() => [.. RuleKinds.UnwantedBy(Draft.Rulebook, List.Choice.List)]);

    private readonly Lazy<DevicesIn?> _devices = new(() => DeviceWords.Of(Draft));
    private readonly Lazy<Dictionary<int, LocalDate>> _devicesIn = new(() => DeviceIn.Of(Draft.Herd, Draft.Rulebook.Plans).ToDictionary(device => device.Animal, device => device.Since));

    /// <summary>Every kind of record that the list's rules look at.</summary>
    public ImmutableArray<Kind> Kinds => _kinds.Value;

    /// <summary>Events of which a rule of the list wants none, or at most so many.</summary>
    public ImmutableArray<EventKind> UnwantedKinds => _unwanted.Value;

    /// <summary>Whose device went in on which day and never came out, by their places in the herd.</summary>
    public IReadOnlyDictionary<int, LocalDate> DevicesIn => _devicesIn.Value;

    /// <summary>The rules.</summary>
    public Rulebook Rulebook => Draft.Rulebook;

    /// <summary>The records, with what is planned before its days.</summary>
    public Herd Herd => List.AsPlanned ?? Draft.Herd;

    /// <summary>The list's name as written.</summary>
    public string Name => List.Choice.List;

    /// <summary>The session whose days it is judged on, where the programme has several; else null.</summary>
    public int? Session => Rulebook.Programme is { Aims.Sessions: > 1 } ? List.Session : null;

    /// <summary>The list's name, with its session where there are several: <c>recipients, session 2</c>.</summary>
    public string NameInSession => Session is { } session ? $"{Name}, session {session}" : Name;

    /// <summary>The judging days: <c>20 and 21 October 2026</c>.</summary>
    public string Days => Dates.Range(List.Choice.JudgedFrom, List.Choice.JudgedTo);

    /// <summary>Whether there is more than one judging day.</summary>
    public bool SeveralDays => List.Choice.JudgedTo > List.Choice.JudgedFrom;

    /// <summary><c>Recipients for 20 and 21 October 2026</c>; of one of several sessions <c>Recipients, session 2, for 3 and 4 November 2026</c>.</summary>
    public string Title => Phrases.Sentence(NameAndDays);

    /// <summary>The same in a sentence.</summary>
    public string NameAndDays => $"{NameInSession}{(Session is null ? "" : ",")} for {Days}";

    /// <summary>The programme's name; empty where the rules stand on their own.</summary>
    public string Programme => Rulebook.Programme?.Name ?? "";

    /// <summary>What it is judged for, what the records reach to and when the answers are void, and as known when.</summary>
    public PageHead Head => new(Programme,
        [new("judged for", Days), ReachWords.Fact(Herd), new("void after", Dates.Long(List.Choice.JudgedTo)), .. Draft.KnownOn is { } day ? [new HeadFact("as known on", Dates.Long(day))] : ImmutableArray<HeadFact>.Empty])
    {
        Devices = _devices.Value,
        HoldsTo = List.Choice.JudgedTo,
    };

    /// <summary>Whether the list says who may be given a hormone.</summary>
    public bool IsForTreatment => Name.Contains("treatment", StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether a day is past by the records, while the days that are judged are not.</summary>
    public bool IsPast(LocalDate day) => Herd.ReachesADay && day < Herd.KnownDay && Herd.KnownDay <= List.Choice.JudgedTo;

    /// <summary>Whether a day is not past by the records: there is time until then.</summary>
    public bool IsAhead(LocalDate day) => Herd.ReachesADay && day >= Herd.KnownDay;

    /// <summary>What becomes of its animals.</summary>
    public ListUse Use => List.Choice.Use;

    /// <summary>What stands under its heading where it clears nobody, or where nothing is given; empty for any other list.</summary>
    public string UseSentence => Use switch
    {
        ListUse.ForLookingOnly => "For looking only: nobody here is cleared for a hormone or an embryo.",
        ListUse.NothingGiven => "Nothing is given: nobody here is treated or given an embryo, and no other list is drawn from this one.",
        _ => "",
    };

    /// <summary>A date with little room: <c>7 Sep</c>.</summary>
    public string Short(LocalDate date) => Dates.Short(date, List.Choice.JudgedFrom.Year);

    /// <summary>A date in a sentence: <c>7 September</c>.</summary>
    public string Long(LocalDate date) => Dates.Long(date, List.Choice.JudgedFrom.Year);
}
