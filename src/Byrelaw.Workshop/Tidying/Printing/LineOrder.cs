namespace Byrelaw.Workshop.Tidying.Printing;

/// <summary>
/// The one order of a block's lines: first what it asks or says, then why, where it comes from and who agreed. The
/// lines of <c>records</c> and <c>programme</c>, and what is told in the order in which it happened, stay as written.
/// </summary>
internal static class LineOrder
{
    /// <summary>Whether the lines of a block have an order of their own, and so no empty lines between them.</summary>
    public static bool Has(BlockKind kind) =>
        kind is BlockKind.Rule or BlockKind.Prefer or BlockKind.Change or BlockKind.Drop or BlockKind.Waive or BlockKind.Accept or BlockKind.Define
            or BlockKind.Expectation or BlockKind.Visits or BlockKind.Method or BlockKind.Assume or BlockKind.Task or BlockKind.Yardstick or BlockKind.Caution;

    /// <summary>
    /// The lines in order; as they were written where another order would let one run on from the text above it, or
    /// would change the order of the comments.
    /// </summary>
    public static IReadOnlyList<Statement> Of(WrittenBlock block)
    {
        if (!Has(block.Kind) || block.Body.Exists(line => line.IsTextAlone))
        {
            return block.Body;
        }

        var ordered = WithTheirLists(block.Body).OrderBy(lines => Rank(lines[0].Syntax)).SelectMany(lines => lines).ToList();
        return Comments(ordered).SequenceEqual(Comments(block.Body), ReferenceEqualityComparer.Instance) ? ordered : block.Body;
    }

    private static IEnumerable<Comment> Comments(IEnumerable<Statement> lines) => lines.SelectMany(line => line.Comments);

    /// <summary>Each line with the lines of the list that it starts.</summary>
    private static List<List<Statement>> WithTheirLists(List<Statement> body)
    {
        var groups = new List<List<Statement>>();
        foreach (var line in body)
        {
            if (line.Syntax is BulletLine && groups.Count > 0)
            {
                groups[^1].Add(line);
            }
            else
            {
                groups.Add([line]);
            }
        }

        return groups;
    }

    private static int Rank(LineSyntax? line) => line switch
    {
        AppliesToLine or SuitsLine => 0,
        CountsLine => 2,
        IfNotKnownLine => 3,
        OnTheDayLine => 4,
        BecauseLine => 5,
        SourceLine => 6,
        AgreedByLine => 7,
        _ => 1,
    };
}
