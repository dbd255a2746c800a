using Byrelaw.Judging.Promises;
using Byrelaw.Language.Diagnostics;

namespace Byrelaw.Judging.Tests.Promises;

/// <summary>A farm with the base vocabulary, its promises, and a few rows: which of the promises are believed.</summary>
internal sealed class PromisingFarm : IRuleFiles
{
    private string _file = "";

    /// <summary>Lines under <c>records</c>.</summary>
    public string Records { get; init; } = """
        up to 2026-10-04
        complete for calving, abortion, pregnancy test, mating, transfer, bull in, bull out, lameness since 2020-01-01
        """;

    /// <summary>Blocks of the farm's own file.</summary>
    public string Own { get; init; } = "";

    /// <summary>Whether its own file holds an error on purpose.</summary>
    public bool IsMiswritten { get; init; }

    /// <summary>Rows of <c>animals.csv</c>: animal, born, sex.</summary>
    public required IEnumerable<string> Animals { get; init; }

    /// <summary>Rows of <c>events.csv</c>: date, animal, kind, value.</summary>
    public required IEnumerable<string> Events { get; init; }

    /// <summary>The herd with the promises that count.</summary>
    public Herd Believe()
    {
        _file = $"use \"vocabulary.byre\"\n\n{Own}\nrecords \"records\"\n{string.Concat(Records.Split('\n').Select(line => $"  {line}\n"))}\nprogramme \"Spring\"\n  collection on 2026-10-12\n";
        var reading = RulebookReader.Read("farm.byre", this)!;
        reading.HasErrors.ShouldBe(IsMiswritten, DiagnosticText.Of(reading.Problems));
        var herd = HerdReader.Read(
            Encoding.UTF8.GetBytes("animal,born,sex\n" + string.Concat(Animals.Select(row => row + "\n"))),
            Encoding.UTF8.GetBytes("date,animal,kind,value\n" + string.Concat(Events.Select(row => row + "\n"))),
            reading.Rulebook.Vocabulary, reading.Rulebook.Records);
        return Believed.Of(reading.Rulebook, herd);
    }

    /// <summary>The promised kinds that are not believed, in the vocabulary's order.</summary>
    public string Fallen()
    {
        var believed = Believe();
        var promised = believed.Vocabulary.Kinds.Where(kind => Records.Contains(kind.Name, StringComparison.Ordinal));
        return string.Join(", ", promised.Where(kind => believed.Coverage.Since[kind.Id] == Day.End).Select(kind => kind.Name));
    }

    public string Resolve(string from, string relative) => relative;

    public string Show(string path) => path;

    public byte[]? Read(string path) => path == "farm.byre" ? Encoding.UTF8.GetBytes(_file) : File.ReadAllBytes(Repository.At("rulesets/" + path));
}
