namespace Byrelaw.Language.Lexing;

/// <summary>What a token is.</summary>
internal enum TokenKind : byte
{
    /// <summary>A word: letters of one script, digits, hyphens, apostrophes.</summary>
    Word,

    /// <summary>A word with a slash or a degree sign, such as <c>umol/L</c>.</summary>
    Unit,

    /// <summary>Words that were declared together as one name, such as <c>bull in</c>.</summary>
    Phrase,

    /// <summary>A text in quotes.</summary>
    Text,

    /// <summary>A number.</summary>
    Number,

    /// <summary>A number with a per cent sign.</summary>
    Percent,

    /// <summary>A day, year-month-day.</summary>
    Date,

    /// <summary>A comma.</summary>
    Comma,

    /// <summary>The hyphen that starts a line of a list.</summary>
    Bullet,

    /// <summary>Something that no line may hold; it carries its problem.</summary>
    Bad,

    /// <summary>The end of a line.</summary>
    EndOfLine,

    /// <summary>The end of the file.</summary>
    EndOfFile,
}
