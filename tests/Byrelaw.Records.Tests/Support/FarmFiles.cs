using Byrelaw.Records.Sources;

namespace Byrelaw.Records.Tests.Support;

/// <summary>A farm's own files in memory, read by the lines of a farm's file.</summary>
internal static class FarmFiles
{
    /// <summary>The herd.</summary>
    /// <param name="farm">The farm's file: words, <c>records</c> and the lines below it.</param>
    /// <param name="files">By the names that it gives them.</param>
    public static Herd Herd(string farm, params (string Name, byte[] Bytes)[] files)
    {
        var rules = Rules(farm);
        rules.Problems.ShouldBeEmpty(DiagnosticText.Of(rules.Problems));
        return HerdReading.Read(Input(rules, files), rules.Rulebook.Vocabulary, rules.Rulebook.Records, null, ReadingOptions.Default).Herd;
    }

    /// <summary>The same of texts.</summary>
    public static Herd Herd(string farm, params (string Name, string Text)[] files) => Herd(farm, Bytes(files));

    /// <summary>What a herd is read from.</summary>
    public static RecordInput Input(RulebookReading rules, (string Name, byte[] Bytes)[] files) => SourceReader.Read(
        file => Array.Find(files, one => one.Name == file).Bytes, file => file, rules.Rulebook.Vocabulary, rules.Rulebook.Records!);

    /// <summary>The bytes of texts.</summary>
    public static (string Name, byte[] Bytes)[] Bytes((string Name, string Text)[] files) => [.. files.Select(file => (file.Name, Encoding.UTF8.GetBytes(file.Text)))];

    /// <summary>The farm's file, bound.</summary>
    public static RulebookReading Rules(string farm) => RulebookReader.Read("farm.byre", new OneFile(farm))!;
}
