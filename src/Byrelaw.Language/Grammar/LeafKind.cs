namespace Byrelaw.Language.Grammar;

/// <summary>What one leaf of the grammar takes.</summary>
internal enum LeafKind : byte
{
    /// <summary>A word of the language itself.</summary>
    Word,

    /// <summary>The first part of a name.</summary>
    Name,

    /// <summary>A further part of a name.</summary>
    MoreOfName,

    /// <summary>A name that the line declares.</summary>
    DeclaredName,

    /// <summary>A text in quotes.</summary>
    Text,

    /// <summary>A number or a per cent.</summary>
    Number,

    /// <summary>A day.</summary>
    Date,

    /// <summary>A unit of measure.</summary>
    Unit,

    /// <summary><c>days</c> and its like.</summary>
    TimeUnit,

    /// <summary>A comma.</summary>
    Comma,

    /// <summary>The hyphen that starts a line of a list.</summary>
    Bullet,
}
