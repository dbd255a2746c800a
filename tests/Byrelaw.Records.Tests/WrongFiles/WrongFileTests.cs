namespace Byrelaw.Records.Tests.WrongFiles;

/// <summary>Each file beside this has one mistake; the approved copy says what is reported, and what is not known because of it.</summary>
public class WrongFileTests
{
    private const string Events = """
        date,animal,kind,value,unit
        2026-01-10,1001,heat,,
        2026-08-20,1002,heat,,

        """;

    private const string Animals = """
        animal,born,sex
        1001,2019-08-12,F
        1002,2020-07-30,F

        """;

    public static TheoryData<string> Files() => [.. Directory
        .GetFiles(Repository.At("tests/Byrelaw.Records.Tests/WrongFiles"), "*.csv")
        .Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public void Each_mistake_is_reported_and_suspends_what_the_row_might_have_said(string name)
    {
        var bytes = File.ReadAllBytes(Repository.At($"tests/Byrelaw.Records.Tests/WrongFiles/{name}.csv"));
        var isAnimals = name.StartsWith("animals", StringComparison.Ordinal);
        var herd = HerdReader.Read(
            isAnimals ? bytes : Read.Bytes(Animals), isAnimals ? Read.Bytes(Events) : bytes, Words.Vocabulary, Words.Keeping());

        herd.Problems.ShouldNotBeEmpty();
        Snapshot.Verify(Shown.ProblemsAndGaps(herd) + (isAnimals ? AnimalsOf(herd) : ""), name, method: "Reported");
    }

    /// <summary>What is held of each animal, with <c>?</c> for what is not known.</summary>
    private static string AnimalsOf(Herd herd)
    {
        var text = new StringBuilder();
        for (var i = 0; i < herd.Count; i++)
        {
            text.Append($"{herd.Numbers[i]}: born {Born(herd, i)}, {herd.Sexes[i]}, parity {herd.RecordedParity[i]}, mob {Shown.Stays(herd, herd.Numbers[i])}");
            foreach (var fact in herd.Vocabulary.Facts)
            {
                var column = herd.Facts[fact.Id];
                var known = column.Texts.Length > 0 ? column.Texts[i] : column.Numbers.Length > 0 ? $"{column.Numbers[i]}" : "";
                text.Append(column.States[i] == FactState.Missing ? "" : $", {fact.Name} {(column.States[i] == FactState.Known ? known : "?")}");
            }

            text.Append('\n');
        }

        return text.Append($"animals without a number: {herd.AnimalsWithoutNumber}\n").ToString();
    }

    private static string Born(Herd herd, int animal) => herd.BornEarliest[animal] == Day.Start
        ? "?"
        : $"{Shown.Date(herd.BornEarliest[animal])} to {Shown.Date(herd.BornLatest[animal])}";
}
