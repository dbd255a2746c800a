using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Events;

/// <summary>Reads whom a row is about. For one thread.</summary>
internal sealed class SubjectReader(AnimalPlaces animals, MobNames mobs, string animalsFile)
{
    private const int MostAdvised = 4096;

    private readonly SpellingTable _mobs = new();
    private readonly Dictionary<string, string?> _nearest = new(StringComparer.Ordinal);

    /// <summary>Reads the cell without a word about what is wrong with it.</summary>
    public RowSubject Read(ReadOnlySpan<byte> cell)
    {
        if (animals.TryFind(cell, out var place))
        {
            return new RowSubject(SubjectSort.Animal, place);
        }

        if (Ascii.EqualsIgnoreCase(cell, "herd"u8))
        {
            return new RowSubject(SubjectSort.Herd, 0);
        }

        if (EmbryoLabel(cell) is { Length: > 0 })
        {
            return new RowSubject(SubjectSort.Embryo, 0);
        }

        return IsMob(cell) && MobName(cell) is { IsEmpty: false } name
            ? new RowSubject(SubjectSort.Mob, MobNumber(name))
            : new RowSubject(SubjectSort.Unreadable, 0);
    }

    /// <summary>The animals of which one is meant, where what identifies her is several animals'; none where anybody may be meant.</summary>
    public int[] Among(ReadOnlySpan<byte> cell)
    {
        if (!Unreadable.Is(cell))
        {
            return [];
        }

        var places = new List<int>();
        foreach (var number in Unreadable.NumbersIn(Encoding.UTF8.GetString(cell)))
        {
            if (animals.TryFind(Encoding.UTF8.GetBytes(number), out var place))
            {
                places.Add(place);
            }
        }

        return [.. places.Distinct()];
    }

    /// <summary>Says what is wrong with a cell that cannot be read.</summary>
    public Diagnostic Problem(RowText row, int cell)
    {
        var text = row.Cells[cell].Value;
        return Unreadable.NumbersIn(text) is { Length: > 1 } numbers ? AnimalProblems.OneOfSeveral(row, cell, Unreadable.Unmarked(text), numbers)
            : text.Length == 0 ? AnimalProblems.NoAnimal(row, cell)
            : EmbryoLabel(Encoding.UTF8.GetBytes(text)) is not null ? EmbryoProblems.NotOfEmbryos(row, cell)
            : IsMob(Encoding.UTF8.GetBytes(text)) ? AnimalProblems.NoMobName(row, cell)
            : NearestNumber.ButForZeros(text, animals) is { } padded ? AnimalProblems.OtherZeros(row, cell, animalsFile, padded)
            : AnimalProblems.UnknownAnimal(row, cell, animalsFile, Nearest(text));
    }

    private string? Nearest(string text)
    {
        if (!_nearest.TryGetValue(text, out var nearest))
        {
            nearest = NearestNumber.To(text, animals);
            if (_nearest.Count < MostAdvised)
            {
                _nearest.Add(text, nearest);
            }
        }

        return nearest;
    }

    /// <summary>The number of the mob with a name.</summary>
    public int MobNumber(ReadOnlySpan<byte> name)
    {
        if (!_mobs.TryFind(name, out var mob))
        {
            mob = mobs.NumberOf(name);
            _mobs.Set(name, mob);
        }

        return mob;
    }

    /// <summary>Whether it is one animal's number but for zeros in front: that is told of with the line that mends it.</summary>
    public bool HasOtherZeros(ReadOnlySpan<byte> cell) => cell.Length <= NearestNumber.Longest && NearestNumber.ButForZeros(Encoding.UTF8.GetString(cell), animals) is not null;

    /// <summary>Whether a cell that cannot be read is a number, which nobody listed.</summary>
    public static bool IsStranger(ReadOnlySpan<byte> cell) => !cell.IsEmpty && !IsMob(cell) && EmbryoLabel(cell) is null;

    /// <summary>The number of the mob that one nobody listed moves to; less than 0 where that cannot be read.</summary>
    public int MobOfStranger(ReadOnlySpan<byte> name) => name.IsEmpty || NotKnownCell.Is(name) ? MobStays.NotKnown : MobNumber(name);

    /// <summary>The label behind <c>embryo:</c>, empty where there is none; null where no embryo is named.</summary>
    public static string? EmbryoLabel(ReadOnlySpan<byte> cell) =>
        cell.Length >= Embryo.Length && Ascii.EqualsIgnoreCase(cell[..Embryo.Length], Embryo) ? Encoding.UTF8.GetString(cell[Embryo.Length..]).Trim() : null;

    private static ReadOnlySpan<byte> Embryo => "embryo:"u8;

    private static bool IsMob(ReadOnlySpan<byte> cell) => cell.Length >= 4 && Ascii.EqualsIgnoreCase(cell[..4], "mob:"u8);

    private static ReadOnlySpan<byte> MobName(ReadOnlySpan<byte> cell) => cell[4..].TrimStart((byte)' ');
}
