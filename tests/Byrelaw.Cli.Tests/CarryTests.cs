namespace Byrelaw.Cli.Tests;

public sealed class CarryTests : IDisposable
{
    private readonly TemporaryFarm _farm = new();

    public void Dispose() => _farm.Dispose();

    [Fact]
    public void Next_seasons_file_stands_beside_the_old_one_and_reads_without_errors()
    {
        _farm.Write("spring.byre", TemporaryFarm.Programme +
            "\nwaive \"Body condition\" for \"1033\"\n  until 2026-10-31\n  because \"Scored by a new hand.\"\n  agreed by \"herd vet\" on 2026-09-20\n"
            + "\ndrop \"Eight weeks calved\"\n  because \"Tried for a season.\"\n  agreed by \"herd vet\" on 2026-06-14\n");
        var old = File.ReadAllText(_farm.At("spring.byre"));
        var run = _farm.Run("carry", "spring.byre", "--to", "spring 2027");
        File.ReadAllText(_farm.At("spring.byre")).ShouldBe(old);
        _farm.Run("check", "spring-2027.byre").Code.ShouldBe(ExitCode.Done);
        Snapshot.Verify($"{run}\n--- spring-2027.byre\n{File.ReadAllText(_farm.At("spring-2027.byre"))}");
    }

    [Fact]
    public void Nothing_is_written_over()
    {
        _farm.Run("carry", "spring.byre", "--to", "spring 2027").Code.ShouldBe(ExitCode.Done);
        _farm.Run("carry", "spring.byre", "--to", "spring 2027").ShouldBeOneClearLine("spring-2027.byre is there already");
    }

    [Fact]
    public void A_season_without_its_year_is_no_season() => _farm.Run("carry", "spring.byre", "--to", "next").ShouldBeOneClearLine("a season that ends in its year");

    [Fact]
    public void A_rule_file_on_its_own_has_no_season() => _farm.Run("carry", "recipients.byre", "--to", "spring 2027").ShouldBeOneClearLine("has no programme");

    [Fact]
    public void The_same_season_asks_for_a_date() => _farm.Run("carry", "spring.byre", "--to", "spring 2026").ShouldBeOneClearLine("--first-date");
}
