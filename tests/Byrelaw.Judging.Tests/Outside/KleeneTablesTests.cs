namespace Byrelaw.Judging.Tests.Outside;

/// <summary>
/// The tables of three-valued logic as SQL computes them. Source: "NULL Handling in SQLite Versus Other Database Engines"
/// (sqlite.org/nulls.html) and SQL-92 (ISO/IEC 9075:1992) 8.12, the truth tables of &lt;search condition&gt; with unknown, which
/// are strong Kleene logic.
/// </summary>
public sealed class KleeneTablesTests
{
    private static readonly (Truth Truth, object? Sql, string Rule, string Cell)[] Values =
    [
        (Truth.False, 0L, "breed is Jersey", "Friesian"),
        (Truth.Unknown, null, "breeding index at least 1", ""),
        (Truth.True, 1L, "breed is Friesian", "Friesian"),
    ];

    [Fact]
    public void All_of_any_of_and_none_of_are_SQLs_AND_OR_and_NOT()
    {
        using var sql = new Sql();
        var farm = new WrittenFarm { Animals = ["7,2020-05-01,F,,,Friesian,,"] };
        var tried = 0;
        foreach (var a in Values)
        {
            Said(farm, "none of", a.Rule).ShouldBe(sql.Truth("SELECT NOT @0", a.Sql));
            foreach (var b in Values)
            {
                Said(farm, "all of", a.Rule, b.Rule).ShouldBe(sql.Truth("SELECT @0 AND @1", a.Sql, b.Sql));
                Said(farm, "any of", a.Rule, b.Rule).ShouldBe(sql.Truth("SELECT @0 OR @1", a.Sql, b.Sql));
                Said(farm, "none of", a.Rule, b.Rule).ShouldBe(sql.Truth("SELECT NOT (@0 OR @1)", a.Sql, b.Sql));
                tried++;
            }
        }

        tried.ShouldBe(9);
    }

    [Fact]
    public void At_least_2_of_is_any_pair_of_them()
    {
        using var sql = new Sql();
        var farm = new WrittenFarm { Animals = ["7,2020-05-01,F,,,Friesian,,"] };
        foreach (var a in Values)
        {
            foreach (var b in Values)
            {
                foreach (var c in Values)
                {
                    Said(farm, "at least 2 of", a.Rule, b.Rule, c.Rule)
                        .ShouldBe(sql.Truth("SELECT (@0 AND @1) OR (@0 AND @2) OR (@1 AND @2)", a.Sql, b.Sql, c.Sql));
                }
            }
        }
    }

    /// <summary>What the judge (and the reference) say of a list of conditions.</summary>
    private static Truth Said(WrittenFarm farm, string list, params string[] conditions) =>
        Enum.Parse<Truth>(farm.Rule($"  needs {list}\n{string.Concat(conditions.Select(condition => $"    - {condition}\n"))}", "2026-09-01"));
}
