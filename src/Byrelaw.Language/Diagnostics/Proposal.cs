namespace Byrelaw.Language.Diagnostics;

/// <summary>A change that may mend a problem; nobody has tried it yet.</summary>
/// <param name="At">What goes; of no length where something is only put in.</param>
/// <param name="Text">What comes in its place; empty where something is only taken out.</param>
internal readonly record struct Proposal(SourceSpan At, string Text)
{
    /// <summary>Puts a text in before a place.</summary>
    public static Proposal Before(SourceSpan at, string text) => new(at with { Length = 0 }, text);

    /// <summary>Puts a text in after a place.</summary>
    public static Proposal After(SourceSpan at, string text) => new(at with { Start = at.End, Length = 0 }, text);

    /// <summary>Takes a word out with the space before it.</summary>
    public static Proposal WithSpaceBefore(SourceSpan at)
    {
        var start = at.Start;
        while (start > 0 && at.File.Text[start - 1] is ' ' or '\t')
        {
            start--;
        }

        return new Proposal(at with { Start = start, Length = at.End - start }, "");
    }

    /// <summary>The whole file's text with the change made.</summary>
    public string Applied() => string.Concat(At.File.Text.AsSpan(0, At.Start), Text, At.File.Text.AsSpan(At.End));
}
