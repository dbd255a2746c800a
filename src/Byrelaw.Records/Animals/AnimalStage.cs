namespace Byrelaw.Records.Animals;

/// <summary>What one row of <c>animals.csv</c> says beside the facts.</summary>
internal struct AnimalRow
{
    /// <summary>No mob is named.</summary>
    public const int NoMob = -1;

    /// <summary>What stands in the mob's cell could not be read.</summary>
    public const int MobUnreadable = -2;

    public int Line;
    public int BornFirst;
    public int BornLast;

    /// <summary>Something stands there as her birth, and cannot be read.</summary>
    public bool BirthIsUnreadable;
    public int Parity;

    /// <summary>The day that the parity is of; <see cref="Day.End"/> where none is said, <see cref="Day.Start"/> where it cannot be read.</summary>
    public int ParityOn;

    public int Mob;
    public Sex Sex;

    /// <summary>What the row may tell of besides, as <see cref="AnimalHints"/> marks it.</summary>
    public int Hints;

    /// <summary>A row of which only the number could be read.</summary>
    public static AnimalRow Unreadable(int line) => new()
    {
        Line = line,
        BornFirst = Day.Start,
        BornLast = Day.End,
        BirthIsUnreadable = true,
        Parity = -2,
        ParityOn = Day.End,
        Mob = MobUnreadable,
    };

    /// <summary>Whether neither sex nor birth says that two rows are of two animals.</summary>
    public readonly bool MayBe(AnimalRow other) =>
        (Sex == other.Sex || Sex == Sex.NotKnown || other.Sex == Sex.NotKnown) && BornFirst <= other.BornLast && other.BornFirst <= BornLast;

    /// <summary>What two rows of one animal under two numbers say together: a blank cell says nothing, what they say differently is not known.</summary>
    public readonly AnimalRow Unite(AnimalRow other) => new()
    {
        Line = Line,
        BornFirst = Math.Max(BornFirst, other.BornFirst),
        BornLast = Math.Min(BornLast, other.BornLast),
        BirthIsUnreadable = BirthIsUnreadable || other.BirthIsUnreadable,
        Parity = Parity == -1 ? other.Parity : other.Parity == -1 || SaysAsMany(other) ? Parity : -2,
        ParityOn = Parity == -1 ? other.ParityOn : ParityOn,
        Mob = Mob == NoMob ? other.Mob : other.Mob == NoMob || Mob == other.Mob ? Mob : MobUnreadable,
        Sex = Sex == Sex.NotKnown ? other.Sex : Sex,
        Hints = Hints | other.Hints,
    };

    private readonly bool SaysAsMany(AnimalRow other) => Parity == other.Parity && (Parity == -1 || ParityOn == other.ParityOn);

    /// <summary>What two rows of one animal say together: what they say differently is not known.</summary>
    public readonly AnimalRow Merge(AnimalRow other) => new()
    {
        Line = Line,
        BornFirst = BornFirst == other.BornFirst && BornLast == other.BornLast ? BornFirst : Day.Start,
        BornLast = BornFirst == other.BornFirst && BornLast == other.BornLast ? BornLast : Day.End,
        BirthIsUnreadable = BirthIsUnreadable || other.BirthIsUnreadable || BornFirst != other.BornFirst || BornLast != other.BornLast,
        Parity = SaysAsMany(other) ? Parity : -2,
        ParityOn = ParityOn,
        Mob = Mob == other.Mob ? Mob : MobUnreadable,
        Sex = Sex == other.Sex ? Sex : Sex.NotKnown,
        Hints = Hints | other.Hints,
    };
}

/// <summary>The rows of <c>animals.csv</c> in the order of the file.</summary>
internal sealed class AnimalStage(FactStage[] facts, AnimalColumns? columns = null)
{
    /// <summary>Where the columns stand; null where nothing could be read.</summary>
    public AnimalColumns? Columns { get; } = columns;

    /// <summary>The animals' numbers.</summary>
    public List<string> Numbers { get; } = [];

    /// <summary>What else the rows say.</summary>
    public List<AnimalRow> Rows { get; } = [];

    /// <summary>By fact id.</summary>
    public FactStage[] Facts { get; } = facts;

    /// <summary>Rows that are doubted, by the reason.</summary>
    public List<(RowDoubt Why, RowInDoubt Row)> Doubted { get; } = [];

    /// <summary>Where the file breaks off, nothing that it said of anybody is known any more, but that she is there; and nobody
    /// knows who stood below.</summary>
    public void ForgetAll()
    {
        for (var row = 0; row < Rows.Count; row++)
        {
            Rows[row] = AnimalRow.Unreadable(Rows[row].Line) with { Hints = Rows[row].Hints };
        }

        foreach (var fact in Facts)
        {
            fact.ForgetAll();
        }

        RowsWithoutNumber++;
    }

    /// <summary>How many rows there are whose animal's number could not be read, or is another row's.</summary>
    public int RowsWithoutNumber { get; set; }
}
