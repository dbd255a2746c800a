namespace Byrelaw.Reporting.Documents;

/// <summary>A piece of a document, the same for a page and for a terminal.</summary>
public abstract record Element
{
    /// <summary>How far in it stands on a terminal: two blanks each.</summary>
    public int Depth { get; init; }
}

/// <summary>What HTML draws. Markdown and a terminal say the same in plain elements, and so can never say something else.</summary>
public abstract record Drawn : Element
{
    /// <summary>The same in headings, sentences, lists and tables; nothing for what only helps to use a page.</summary>
    public abstract IEnumerable<Element> InWords();
}

/// <summary>An empty line on a terminal.</summary>
public sealed record EmptyLine : Element;

/// <summary>A heading.</summary>
/// <param name="Level">1 for the document's own.</param>
/// <param name="Words">What it says.</param>
public sealed record Heading(int Level, Wording Words) : Element;

/// <summary>How loud a sentence is on a page.</summary>
public enum Tone
{
    /// <summary>As loud as the others.</summary>
    Plain,

    /// <summary>The one that is read first.</summary>
    Lead,

    /// <summary>Somewhat larger.</summary>
    Large,

    /// <summary>Softer: what is the same for many.</summary>
    Soft,
}

/// <summary>A sentence, or several that belong together.</summary>
/// <param name="Words">What it says.</param>
/// <param name="Tone">How loud it is.</param>
public sealed record Sentence(Wording Words, Tone Tone = Tone.Plain) : Element;

/// <summary>A list.</summary>
/// <param name="Items">At least one.</param>
/// <param name="IsNumbered">Whether their order is told.</param>
public sealed record Listing(ImmutableArray<Wording> Items, bool IsNumbered) : Element;

/// <summary>What stands apart because somebody else's paper says it too.</summary>
/// <param name="Words">What it says.</param>
public sealed record Quotation(Wording Words) : Element;

/// <summary>Lines of a file, shown as they are.</summary>
/// <param name="Lines">Plain text.</param>
public sealed record FileLines(ImmutableArray<string> Lines) : Element;

/// <summary>A drawing; only HTML shows it, so that what it shows is said in words too.</summary>
/// <param name="Html">An inline picture with its words for those who cannot see it, made by this program.</param>
public sealed record Picture(string Html) : Element;
