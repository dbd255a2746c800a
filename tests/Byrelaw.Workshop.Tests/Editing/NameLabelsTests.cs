using Byrelaw.Language.Grammar;
using Byrelaw.Workshop.Editing.Names;

namespace Byrelaw.Workshop.Tests.Editing;

public sealed class NameLabelsTests
{
    [Fact]
    public void Of_every_name_that_the_base_files_and_the_farms_hold_it_is_known_what_may_stand_there()
    {
        var unknown = new HashSet<string>();
        var seen = new HashSet<string>();
        foreach (var path in Files())
        {
            var reading = RulebookReader.Read(path, new RuleFilesInFolder(Repository.Root))!;
            var notes = new GrammarNotes();
            var file = reading.Parts!.Files[0];
            BlockReader.Read(file.Lines, reading.Parts.Phrases, [], notes);
            foreach (var wanted in notes.Lines.SelectMany(line => line.Taken.OfType<Wanted>().Concat(line.Following)).Where(wanted => wanted.Kind == LeafKind.Name))
            {
                seen.Add(wanted.Label);
                if (!NameLabels.Knows(wanted))
                {
                    unknown.Add(wanted.Label);
                }
            }
        }

        unknown.ShouldBeEmpty();
        seen.Count.ShouldBeGreaterThan(15);
    }

    private static IEnumerable<string> Files() => new[] { "rulesets", "examples" }
        .SelectMany(folder => Directory.EnumerateFiles(Repository.At(folder), "*.byre", SearchOption.AllDirectories))
        .Select(path => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/'));
}
