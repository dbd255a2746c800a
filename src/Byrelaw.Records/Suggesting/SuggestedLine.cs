namespace Byrelaw.Records.Suggesting;

/// <summary>A line of a suggestion: one that counts, or one of several between which a person chooses.</summary>
/// <param name="Indent">In spaces.</param>
/// <param name="Text">The line, without what a person must take away first.</param>
/// <param name="IsOpen">Whether a person must choose: it then stands behind <c># ? </c> and says nothing yet.</param>
/// <param name="Remark">What speaks for it; null for nothing.</param>
internal sealed record SuggestedLine(int Indent, string Text, bool IsOpen = false, string? Remark = null)
{
    /// <summary>What stands before a line that waits for a person.</summary>
    public const string Open = "# ? ";

    /// <inheritdoc/>
    public override string ToString() => $"{new string(' ', Indent)}{(IsOpen ? Open : "")}{Text}{(Remark is null ? "" : $"  # {Remark}")}";
}
