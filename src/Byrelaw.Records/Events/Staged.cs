namespace Byrelaw.Records.Events;

/// <summary>One row that could be read, about one animal, before the rows are sorted.</summary>
/// <typeparam name="TResult">What it found; <see cref="Nothing"/> for an event.</typeparam>
internal struct Staged<TResult>(int animal, int day, int line, TResult result)
    where TResult : struct
{
    /// <summary>Not a row any more: its date turned out to be impossible.</summary>
    public const int TakenOut = -1;

    public int Animal = animal;
    public int Day = day;
    public int Line = line;
    public TResult Result = result;
}

/// <summary>An event finds nothing: it happened.</summary>
internal readonly struct Nothing;
