using Byrelaw.Records.Embryos;

namespace Byrelaw.Records.Events;

/// <summary>What one thread has read of <c>events.csv</c>.</summary>
internal sealed class EventStage
{
    /// <summary>Makes room for the kinds of a vocabulary, and for words that are left out.</summary>
    public EventStage(Vocabulary vocabulary, int leftOut = 0)
    {
        LeftOut = new int[leftOut];
        Events = [.. vocabulary.ById.Select(_ => new ChunkedList<Staged<Nothing>>())];
        Tests = [.. vocabulary.ById.Select(_ => new ChunkedList<Staged<byte>>())];
        Measures = [.. vocabulary.ById.Select(_ => new ChunkedList<Staged<AllowedRange>>())];
    }

    /// <summary>By kind id: events, moves left out.</summary>
    public ChunkedList<Staged<Nothing>>[] Events { get; }

    /// <summary>By kind id: answers.</summary>
    public ChunkedList<Staged<byte>>[] Tests { get; }

    /// <summary>By kind id: measured values.</summary>
    public ChunkedList<Staged<AllowedRange>>[] Measures { get; }

    /// <summary>Moves from mob to mob.</summary>
    public ChunkedList<Staged<int>> Moves { get; } = new();

    /// <summary>How many rows there are of each word that is left out.</summary>
    public int[] LeftOut { get; }

    /// <summary>Details of entries.</summary>
    public ChunkedList<DetailCell> Details { get; } = new();

    /// <summary>What happened to embryos.</summary>
    public List<EmbryoRow> Embryos { get; } = [];

    /// <summary>Rows of sheets that an entry, or a row that says that it was not done, names: with the kind that it closes.</summary>
    public List<(string SheetRow, int Kind, int Animal, int Day, int Line)> SheetRows { get; } = [];

    /// <summary>Rows about a mob or the herd.</summary>
    public List<GroupRow> Groups { get; } = [];

    /// <summary>Moves of animals that nobody listed, to a mob by the number of its name; less than 0 where that cannot be read.</summary>
    public List<MobRow> MovesOfStrangers { get; } = [];

    /// <summary>Rows of numbers that are no animal's.</summary>
    public List<(string Number, RowInDoubt Row)> NotListed { get; } = [];

    /// <summary>What rows that could not be read might have said.</summary>
    public List<Gap> Gaps { get; } = [];

    /// <summary>The last line that is read; int.MaxValue where the file does not break off within a quotation.</summary>
    public int LastLine { get; set; } = int.MaxValue;

    /// <summary>Rows that are doubted, by the reason.</summary>
    public List<(RowDoubt Why, RowInDoubt Row)> Doubted { get; } = [];

    /// <summary>What is wrong.</summary>
    public List<Diagnostic> Problems { get; } = [];

    /// <summary>Rows entered before the day they are about.</summary>
    public List<int> EnteredEarly { get; } = [];

    /// <summary>Results of a mob or the herd that prove nothing of any one animal.</summary>
    public List<int> NobodysResults { get; } = [];

    /// <summary>The latest days on which rows were entered.</summary>
    public LatestDays LatestEntries { get; } = new();

    /// <summary>Notes what a row that cannot be read might have said.</summary>
    /// <param name="subject">Whom it is about.</param>
    /// <param name="kind">What happened; null where that cannot be read.</param>
    /// <param name="day">When; null where that cannot be read.</param>
    /// <param name="line">Where it stands.</param>
    /// <param name="like">Where that cannot be read, the kind that it is spelt like; null for none.</param>
    public void Suspend(RowSubject subject, Kind? kind, int? day, int line, Kind? like = null)
    {
        Gaps.Add(new Gap(subject.AnimalOfGap, kind?.Id ?? -1, day ?? Day.Start, day ?? Day.End, line) { Like = like?.Id });
    }

    /// <summary>Notes what a row that can be read may tell of besides.</summary>
    /// <param name="subject">Whom it is about.</param>
    /// <param name="kind">What else may have happened.</param>
    /// <param name="day">When; null where that cannot be read.</param>
    /// <param name="line">Where it stands.</param>
    public void Hint(RowSubject subject, Kind kind, int? day, int line) => Gaps.Add(new Gap(subject.AnimalOfGap, kind.Id, day ?? Day.Start, day ?? Day.End, line) { IsHint = true });

    /// <summary>Lets go of the rows of a kind once they are sorted: they are as large as the herd.</summary>
    public void LetGo(int kind)
    {
        Events[kind] = new();
        Tests[kind] = new();
        Measures[kind] = new();
    }
}
