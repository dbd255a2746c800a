namespace Byrelaw.Records.Csv;

/// <summary>What is wrong with how a cell is written.</summary>
internal enum CellFlaw
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>A quotation mark inside a cell that does not start with one.</summary>
    QuoteInside,

    /// <summary>Text after the closing quotation mark.</summary>
    TextAfterQuote,

    /// <summary>The opening quotation mark is never closed on the line.</summary>
    NeverClosed,

    /// <summary>Bytes that are not UTF-8.</summary>
    NotUtf8,

    /// <summary>A NUL character.</summary>
    Nul,
}

/// <summary>One cell of a line as text.</summary>
/// <param name="Start">Where it starts in the line, in UTF-16 units from 0.</param>
/// <param name="Length">How long it is in the line, quotation marks included.</param>
/// <param name="Value">What it says, trimmed.</param>
/// <param name="Flaw">What is wrong with it.</param>
internal readonly record struct Cell(int Start, int Length, string Value, CellFlaw Flaw);
