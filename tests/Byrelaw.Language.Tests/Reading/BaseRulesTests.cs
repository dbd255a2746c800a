using System.Security.Cryptography;
using Byrelaw.Language.BaseRules;

namespace Byrelaw.Language.Tests.Reading;

/// <summary>Rule files that the program carries: <c>use base recipients edition 1</c>.</summary>
public sealed class BaseRulesTests
{
    [Fact]
    public void A_base_file_is_the_one_in_the_folder_of_rule_sets_with_all_that_it_uses()
    {
        var byName = Read("use base recipients edition 1\nuse base words new zealand edition 1\n");
        var byPath = RulebookReader.Read("farm.byre", RuleSets().Aggregate(Farm("use \"recipients.byre\"\nuse \"words-new-zealand.byre\"\n"), (files, file) => files.Add(file.Name, file.Text)))!;
        byName.Problems.ShouldBeEmpty();
        CanonicalText.Of(byName.Rulebook).ShouldBe(CanonicalText.Of(byPath.Rulebook));
        byName.Rulebook.Rules.Length.ShouldBeGreaterThan(15);
        byName.Rulebook.Rules[0].Span.File.Path.ShouldStartWith("base ");
    }

    [Fact]
    public void Every_rule_set_can_be_used_by_its_name()
    {
        BaseEditions.Names(1).ShouldBe(RuleSets().Select(file => file.Name[..^".byre".Length].Replace('-', ' ')).Order(StringComparer.Ordinal));
        foreach (var name in BaseEditions.Names(1))
        {
            Read($"use base {name} edition 1\n").Problems.ShouldBeEmpty(name);
        }
    }

    /// <summary>
    /// An edition never changes. Until the first version is handed out edition 1 is what stands in the folder, and this is approved anew; from
    /// then on a change of these files is a new edition, and this stays.
    /// </summary>
    [Fact]
    public void An_edition_stays_what_it_is() => Snapshot.Verify(string.Concat(
        BaseEditions.Names(1).Select(name => $"{name}: {Convert.ToHexStringLower(SHA256.HashData(BaseEditions.Read(1, name)!))}\n")));

    [Theory]
    [InlineData("use base recipient edition 1", "B0009")]
    [InlineData("use base recipients edition 2", "B0010")]
    [InlineData("use base recipients edition 1.5", "B0010")]
    [InlineData("use base recipients edition", "B0402")]
    [InlineData("use base", "B0402")]
    [InlineData("use base recipients edition 1 2", "B0402")]
    public void A_line_that_names_no_edition_there_is_breaks_every_list(string line, string code)
    {
        var reading = Read($"{line}\n");
        reading.Problems.Where(problem => problem.Severity == Severity.Error).Select(problem => problem.Code).ShouldBe([code]);
        reading.Rulebook.BrokenParts.ShouldNotBeEmpty();
    }

    [Fact]
    public void Without_an_edition_the_newest_is_read_with_a_warning()
    {
        var reading = Read("use base recipients\n");
        reading.Problems.Select(problem => (problem.Code, problem.Severity)).ShouldBe([("B0011", Severity.Warning)]);
        CanonicalText.Of(reading.Rulebook).ShouldBe(CanonicalText.Of(Read("use base recipients edition 1\n").Rulebook));
    }

    [Fact]
    public void A_file_of_the_farms_own_may_lie_over_it()
    {
        var reading = Read("""
            use base recipients edition 1

            change "Eight weeks calved"
              needs at least 63 days since last calving
              because "Wet flats."
              agreed by "herd vet" on 2026-06-14
            """);
        reading.Problems.ShouldBeEmpty();
        CanonicalText.Of(reading.Rulebook.Rules.Single(rule => rule.Name == "Eight weeks calved").Needs).ShouldContain("63 days");
    }

    private static RulebookReading Read(string text) => RulebookReader.Read("farm.byre", Farm(text))!;

    private static RuleFilesInMemory Farm(string text) => new RuleFilesInMemory().Add("farm.byre", text);

    private static IEnumerable<(string Name, string Text)> RuleSets() =>
        Directory.EnumerateFiles(Repository.At("rulesets"), "*.byre").Select(path => (Path.GetFileName(path), File.ReadAllText(path)));
}
