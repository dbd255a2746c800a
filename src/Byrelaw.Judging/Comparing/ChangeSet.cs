namespace Byrelaw.Judging.Comparing;

/// <summary>Some of the changes between two rulebooks, by place.</summary>
/// <param name="Members">In order.</param>
internal sealed record ChangeSet(ImmutableArray<int> Members)
{
    public static ChangeSet None { get; } = new([]);

    public static ChangeSet All(int count) => new([.. Enumerable.Range(0, count)]);

    public static ChangeSet Of(params int[] members) => new([.. members]);

    public ChangeSet Without(int member) => new(Members.Remove(member));
}
