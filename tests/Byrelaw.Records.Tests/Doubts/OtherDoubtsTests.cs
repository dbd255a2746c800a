using System.Reflection;

namespace Byrelaw.Records.Tests.Doubts;

public sealed class OtherDoubtsTests
{
    /// <summary>What a copy forgets nobody misses until it is asked for: rows that cannot be read were lost so, wherever anything was doubted.</summary>
    [Fact]
    public void A_herd_with_other_doubts_is_the_same_herd_in_all_else()
    {
        var herd = Read.Events("2026-08-01,7,calving,,", "2026-13-01,7,calving,,", "2026-08-02,7,no such word,,");
        var copy = herd.With([]);

        copy.RowProblems.ShouldNotBeEmpty();
        foreach (var property in typeof(Herd).GetProperties(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance)
            .Where(property => property.CanWrite && property.Name is not nameof(Byrelaw.Records.Herds.Herd.Doubted) and not nameof(Byrelaw.Records.Herds.Herd.Coverage)))
        {
            property.GetValue(copy).ShouldBe(property.GetValue(herd), property.Name);
        }
    }
}
