using System.Diagnostics;

namespace Byrelaw.Benchmarks;

/// <summary>How much memory a very large herd takes: a million animals with 24 million events, from files to answers.</summary>
internal static class ManyAnimals
{
    public static void Run(int count)
    {
        var folder = Directory.CreateTempSubdirectory("byrelaw-").FullName;
        try
        {
            // The files are written by a process of its own, so that making them does not count.
            using (var writer = Process.Start(Environment.ProcessPath!, ["write", folder, count.ToString(System.Globalization.CultureInfo.InvariantCulture)]))
            {
                writer.WaitForExit();
            }

            Judged(folder);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Judges the files of a folder, and says how long that took.</summary>
    public static void Judged(string folder)
    {
        var clock = Stopwatch.StartNew();
        var herd = HerdReader.Read(folder, "", MadeUpHerd.Words, MadeUpFiles.Keeping);
        var read = clock.Elapsed;
        var answers = new Judge(TwelveCriteria.Rulebook, herd).Answers(TwelveCriteria.Choice).Answers;
        using var self = Process.GetCurrentProcess();
        Console.WriteLine($"{herd.Count} animals: read in {read.TotalSeconds:0.0} s, all {answers.Length} answers after {clock.Elapsed.TotalSeconds:0.0} s, "
            + $"{answers.Count(answer => answer == Byrelaw.Judging.Verdicts.Answer.Ready)} Ready, processor {self.TotalProcessorTime.TotalSeconds:0.0} s, at most {self.PeakWorkingSet64 / (1024 * 1024)} MiB of memory");
    }
}
