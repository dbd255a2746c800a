namespace Byrelaw.Records.Doubts;

/// <summary>Which cell of a row a doubt is about.</summary>
internal enum DoubtfulCell
{
    /// <summary>The date of an event.</summary>
    Date,

    /// <summary>Whose event it is.</summary>
    Animal,

    /// <summary>What happened.</summary>
    Kind,

    /// <summary>The result.</summary>
    Value,

    /// <summary>The day of entry.</summary>
    Recorded,

    /// <summary>A row of the animals' file.</summary>
    RowOfAnimals,
}

/// <summary>Something that can be read but is hard to believe. It suspends nothing.</summary>
/// <param name="Code">R02xx.</param>
/// <param name="Line">Of the events' file, or of the animals' file for <see cref="DoubtfulCell.RowOfAnimals"/>.</param>
/// <param name="Cell">Where to point.</param>
/// <param name="Found">What is hard to believe.</param>
/// <param name="Expected">What would be usual; null where that is plain.</param>
/// <param name="Help">What to look at; null where that is plain.</param>
internal readonly record struct Doubt(string Code, int Line, DoubtfulCell Cell, string Found, string? Expected = null, string? Help = null);
