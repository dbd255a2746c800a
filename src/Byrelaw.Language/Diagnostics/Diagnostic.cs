namespace Byrelaw.Language.Diagnostics;

/// <summary>
/// One problem in a file that a person wrote: a rule file or a file of records.
/// Read as <c>file:line:column: severity code: found; expected</c>.
/// </summary>
/// <param name="Code">Stable, such as <c>B0204</c> (rule files) or <c>R0103</c> (records).</param>
/// <param name="Severity">Error or warning.</param>
/// <param name="File">As shown: relative, with forward slashes.</param>
/// <param name="Line">From 1.</param>
/// <param name="Column">From 1, in UTF-16 units.</param>
/// <param name="Length">How many characters to mark, at least 1.</param>
/// <param name="Found">What stands there, in the reader's words.</param>
/// <param name="Expected">What was expected; null where <paramref name="Found"/> says it all.</param>
/// <param name="Help">How to mend it; null where nothing better can be said.</param>
/// <param name="LineText">The line as it stands in the file, without its line end.</param>
public sealed record Diagnostic(
    string Code, Severity Severity, string File, int Line, int Column, int Length,
    string Found, string? Expected, string? Help, string LineText)
{
    /// <summary>By its place and its code alone: there may be a million of them, each with long texts.</summary>
    public override int GetHashCode() => HashCode.Combine(Line, Column, Length, Code);

    /// <summary>The message without its place: what was found, and what was expected.</summary>
    public string Message => Expected is null ? Found : $"{Found}; {Expected}";

    /// <summary>
    /// The change that <see cref="Help"/> speaks of; null where none mends it, or where nobody has asked
    /// <c>Corrector</c> of the workshop to try any.
    /// </summary>
    public Correction? Correction { get; init; }

    /// <summary>Changes that may mend it, the likeliest first; a <see cref="Correction"/> is one of them that was tried.</summary>
    internal IEnumerable<Proposal> Proposed { get; init; } = [];

    /// <summary>The same problem with one more change that may mend it.</summary>
    internal Diagnostic Or(Proposal proposal) => this with { Proposed = Proposed.Append(proposal) };

    /// <summary>The same problem with more changes that may mend it, worked out only if someone tries them.</summary>
    internal Diagnostic OrAny(IEnumerable<Proposal> proposals) => this with { Proposed = Proposed.Concat(proposals) };

    /// <summary>Whether <see cref="Help"/> is only to be shown once one of the changes it speaks of was tried and mends: it says what was likely meant.</summary>
    internal bool IsHelpTried { get; init; }

    /// <summary>Lines to write, ready to paste, on lines parted by LF; null where <see cref="Help"/> says it all.</summary>
    public string? Lines { get; init; }

    /// <summary>An example that shows the problem, such as an animal's records, on lines parted by LF; null for none.</summary>
    public string? Shown { get; init; }
}
