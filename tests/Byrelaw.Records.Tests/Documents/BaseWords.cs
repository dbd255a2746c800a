namespace Byrelaw.Records.Tests.Documents;

/// <summary>The words of the shared rule files.</summary>
internal sealed class BaseWords : IRuleFiles
{
    public static Vocabulary Vocabulary => RulebookReader.Read("rulesets/vocabulary.byre", new BaseWords())!.Rulebook.Vocabulary;

    public string Resolve(string from, string relative) => "rulesets/" + relative;

    public string Show(string path) => path;

    public byte[]? Read(string path) => File.ReadAllBytes(Repository.At(path));
}
