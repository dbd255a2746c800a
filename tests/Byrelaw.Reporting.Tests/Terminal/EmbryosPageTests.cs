using Byrelaw.Language.Reading;
using Byrelaw.Records.Reading;
using Byrelaw.Reporting.Terminal;
using Byrelaw.Testing.Documents;

namespace Byrelaw.Reporting.Tests.Terminal;

/// <summary>What the page about records says of embryos is what the program says.</summary>
public sealed class EmbryosPageTests
{
    [Fact]
    public void What_became_of_the_embryos_of_the_page_is_told()
    {
        var told = 0;
        var folder = Directory.CreateTempSubdirectory("byrelaw-embryos").FullName;
        try
        {
            ExecutedPage.Verify("docs/records.md", fence =>
            {
                var name = (fence.Language, fence.Rest) switch
                {
                    ("csv", "animals") => "animals.csv",
                    ("csv", "embryos") => "embryos.csv",
                    ("csv", "pedigree") => "pedigree.csv",
                    ("csv", "events of embryos") => "events.csv",
                    _ => null,
                };
                if (name is not null)
                {
                    File.WriteAllText(Path.Combine(folder, name), fence.Text);
                }

                if ((fence.Language, fence.Rest) is not ("text", "embryos"))
                {
                    return null;
                }

                told++;
                var words = RulebookReader.Read("vocabulary.byre", new RuleFiles())!.Rulebook.Vocabulary;
                var lines = RecordsText.Of(HerdReader.Read(folder, "", words, null), Ink.Plain).Split('\n');
                return string.Concat(lines.SkipWhile(line => !line.Contains("embryos", StringComparison.Ordinal)).TakeWhile(line => line.Length > 0).Select(line => line + "\n"));
            });
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        told.ShouldBe(1);
    }

    private sealed class RuleFiles : IRuleFiles
    {
        public string Resolve(string from, string relative) => relative;

        public string Show(string path) => path;

        public byte[]? Read(string path) => File.ReadAllBytes(Repository.At("rulesets/" + path));
    }
}
