using Byrelaw.Judging.Truths;

namespace Byrelaw.Benchmarks;

/// <summary>100,000 animals with 2.4 million events, twelve criteria, one thread: what asking costs beside a loop written by hand.</summary>
[ShortRunJob]
public class JudgingBenchmarks
{
    private Herd _herd = null!;
    private Judge _judge = null!;

    [GlobalSetup]
    public void SetUp()
    {
        _herd = MadeUpHerd.Of(100_000);
        _judge = new Judge(TwelveCriteria.Rulebook, _herd);
        Agree(TwelveCriteria.ByHand(_herd, MadeUpHerd.Known), OneDate());
    }

    [Benchmark(Baseline = true)]
    public short[] ByHand() => TwelveCriteria.ByHand(_herd, MadeUpHerd.Known);

    [Benchmark]
    public Truth[][] OneDate() => _judge.TruthsOn(TwelveCriteria.Choice, MadeUpHerd.Known);

    [Benchmark]
    public int Timelines() => _judge.TraceAll(TwelveCriteria.Choice);

    [Benchmark]
    public int Answers() => _judge.Answers(TwelveCriteria.Choice, threads: 1).Answers.Length;

    /// <summary>What is fast and wrong is not worth measuring.</summary>
    private static void Agree(short[] byHand, Truth[][] judged)
    {
        const int Gates = 2;
        for (var animal = 0; animal < byHand.Length; animal++)
        {
            for (var rule = 0; rule + Gates < judged.Length; rule++)
            {
                if ((judged[rule + Gates][animal] == Truth.True) != ((byHand[animal] >> rule & 1) == 1))
                {
                    throw new InvalidOperationException($"The rules and the loop disagree on rule {rule + 1} of animal {animal}.");
                }
            }
        }
    }
}
