using Byrelaw.Judging.Verdicts;

namespace Byrelaw.Benchmarks;

/// <summary>From the two files of 100,000 animals with 2.4 million events to every answer, with as many threads as there are.</summary>
[ShortRunJob]
public class FileBenchmarks
{
    private string _folder = null!;

    [GlobalSetup]
    public void SetUp()
    {
        _folder = Directory.CreateTempSubdirectory("byrelaw-").FullName;
        MadeUpFiles.Write(_folder, 100_000);
        if (ReadRecords() is not { Count: 100_000, Problems.Length: 0 })
        {
            throw new InvalidOperationException("The files were not read whole.");
        }
    }

    [GlobalCleanup]
    public void CleanUp() => Directory.Delete(_folder, recursive: true);

    [Benchmark]
    public Herd ReadRecords() => HerdReader.Read(_folder, "", MadeUpHerd.Words, MadeUpFiles.Keeping);

    [Benchmark]
    public Answer[] FromFilesToAnswers() => new Judge(TwelveCriteria.Rulebook, ReadRecords()).Answers(TwelveCriteria.Choice).Answers;
}
