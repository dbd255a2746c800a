namespace Byrelaw.Workshop.Tidying.Written;

/// <summary>Decides which comments between two blocks belong to the upper one.</summary>
internal static class CommentGroups
{
    /// <summary>
    /// Moves them there: those that are indented as the block's own lines are, as long as they follow it. But
    /// comments that an empty line parts from what is above, and none from the next head, belong to that.
    /// </summary>
    /// <param name="between">All comments between the blocks.</param>
    /// <param name="upper">The upper block.</param>
    /// <param name="isPartedFromNext">Whether an empty line, or the file's end, stands between the last of them and what follows.</param>
    public static void MoveBelow(List<Comment> between, WrittenBlock upper, bool isPartedFromNext)
    {
        if (upper.Body.Count == 0 && !LineTable.HasBody(upper.Kind))
        {
            return;
        }

        var last = isPartedFromNext ? -1 : between.FindLastIndex(comment => comment.HasBlankBefore);
        var most = last < 0 ? between.Count : last;
        var count = between.FindIndex(comment => !comment.IsIndented);
        count = Math.Min(most, count < 0 ? between.Count : count);
        upper.Below.AddRange(between.Take(count));
        between.RemoveRange(0, count);
    }
}
