using BenchmarkDotNet.Attributes;
using Byrelaw.Judging;
using Byrelaw.Judging.Truths;
using Byrelaw.Records.Herds;

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
        if (OneDate() != ByHand())
        {
            throw new InvalidOperationException("The rules and the loop disagree.");
        }
    }

    [Benchmark(Baseline = true)]
    public int ByHand() => TwelveCriteria.CountReadyByHand(_herd, MadeUpHerd.Known);

    [Benchmark]
    public int OneDate() => _judge.TruthsOn(TwelveCriteria.Choice, MadeUpHerd.Known).Count(truth => truth == Truth.True);

    [Benchmark]
    public int AnswersWithTimelines() => _judge.Answers(TwelveCriteria.Choice, threads: 1).Answers.Length;
}
