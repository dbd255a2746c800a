namespace Byrelaw.Records.Events;

/// <summary>What every thread that reads <c>events.csv</c> has to know.</summary>
/// <param name="File">The file as shown.</param>
/// <param name="AnimalsFile">The animals' file as shown.</param>
/// <param name="Columns">Where each column stands.</param>
/// <param name="Vocabulary">The words the rows may use.</param>
/// <param name="LeaveOut">Kinds that nobody declares and nobody minds.</param>
/// <param name="Animals">Places of animals by number.</param>
/// <param name="Mobs">Numbers of mobs.</param>
/// <param name="KnownOn">Rows entered after this day are not seen.</param>
internal sealed record EventReading(
    string File, string AnimalsFile, EventColumns Columns, Vocabulary Vocabulary, IReadOnlyList<string> LeaveOut,
    AnimalPlaces Animals, MobNames Mobs, int KnownOn)
{
    /// <summary>The animals, by their places.</summary>
    public IReadOnlyList<AnimalRow> Births { get; init; } = [];

    /// <summary>Nothing is entered after this day: a row that says so is in doubt on its own date.</summary>
    public int Today { get; init; } = Day.End;

    /// <summary>Lines that are as if they were not there.</summary>
    public IReadOnlySet<int> WithoutLines { get; init; } = new HashSet<int>();

    /// <summary>What a person says is no such kind, as in <c>leave out Due, which is not pregnancy test</c>.</summary>
    public ImmutableArray<LeftOut> SaidNot { get; init; } = [];

    /// <summary>Whether a person says of a heading, or of what stands below it, that it is no such kind.</summary>
    public bool IsSaidNot(string heading, string text, Kind kind) => SaidNot.IsSaid(heading, text, kind);

    /// <summary>The kind with this id; null for one that nobody declares.</summary>
    public Kind? KindOf(int id) => id < 0 ? null : Vocabulary.Kinds[id];

    /// <summary>Whether a kind puts a bull in, or takes one out.</summary>
    public bool IsOfCompany(Kind? kind) => kind is not null && Vocabulary.Spells.Any(spell => spell.WithMaleFrom is not null && (spell.From.Id == kind.Id || spell.Until.Id == kind.Id));

    /// <summary>Whether a row that cannot be read may name another mob than that of whom it is about: where a bull was put, or taken from, may stand in its value.</summary>
    /// <param name="kind">What happened; null where that cannot be read.</param>
    /// <param name="value">What stands there; null where that cannot be told.</param>
    public bool NamesAnyMob(Kind? kind, string? value) => value != "" && IsOfCompany(kind);
}
