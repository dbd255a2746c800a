namespace Byrelaw.Judging.Criteria;

/// <summary>What was counted, over all kinds.</summary>
internal struct EntryTally
{
    /// <summary>How many there are, wherever her anchor may have been.</summary>
    public int Least;

    /// <summary>The same with coverage stopping at the known day.</summary>
    public int StrictLeast;

    /// <summary>How many there may be, of those on record.</summary>
    public int Most;

    public bool IsCovered;
    public bool IsStrictlyCovered;
    public bool IsCertain;
    public bool IsStrictlyCertain;

    /// <summary>With coverage stopping at the known day, a window may begin earlier.</summary>
    public bool BeginsEarlier;

    public bool IsPending;
}
