using Byrelaw.Language.Binding.Examples;

namespace Byrelaw.Language.Reading;

/// <summary>Reads a line that is supposed to stand in the book, written as in a worked example: <c>bull out 2026-08-29</c>.</summary>
public static class SupposedLine
{
    /// <summary>Where its problems are said to stand.</summary>
    public const string Place = "--suppose";

    /// <summary>What is on record by the line.</summary>
    /// <param name="reading">The rules, with the words of the farm.</param>
    /// <param name="line">The line.</param>
    /// <returns>Null where it cannot be read, with what is wrong; and null with no problem where it is read, and is not one entry of hers.</returns>
    public static (ExampleRecord? Record, ImmutableArray<Diagnostic> Problems) Read(RulebookReading reading, string line)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(line);
        var parts = reading.Parts ?? throw new ArgumentException("The rules were not read from files.", nameof(reading));
        var file = FileDecoding.Decode(Place, Encoding.UTF8.GetBytes(line), isRoot: true);
        var head = FileDecoding.Decode(Place, "example \"supposed\""u8.ToArray(), isRoot: true);
        var problems = new List<Diagnostic>(file.Problems);
        var binder = new ExampleRecordBinder(new Context(parts.Names, problems));
        var blocks = BlockReader.Read([.. head.Lines, .. file.Lines], parts.Phrases, problems);
        if (problems.Count == 0)
        {
            binder.Bind(blocks[0]);
        }

        var isOne = problems.Count == 0 && blocks.Count == 1 && file.Lines.Count == 1 && binder.Records is [{ OfHerMob: 0 }];
        return (isOne ? binder.Records[0] : null, [.. problems]);
    }
}
