namespace Byrelaw.Records.Suggesting;

/// <summary>The column by which the rows of a file find their animal.</summary>
/// <param name="Column">Which.</param>
/// <param name="IsByIdentity">Whether it holds official identities, not the farm's own numbers.</param>
/// <param name="IsSure">Whether nothing else can be meant.</param>
/// <param name="Remark">What speaks for it.</param>
internal sealed record AnimalColumn(ColumnProfile Column, bool IsByIdentity, bool IsSure, string Remark)
{
    /// <summary>Whether its numbers are those of another file but for zeros in front.</summary>
    public bool IsByNumber { get; init; }
}
