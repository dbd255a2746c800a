using Byrelaw.Judging.Tests.Generators;
using Byrelaw.Judging.Tests.SideBySide;
using CsCheck;
namespace Byrelaw.Judging.Tests;
public class Probe
{
    [Fact]
    public void Disagreements()
    {
        var kinds = new System.Collections.Concurrent.ConcurrentDictionary<string, int>();
        var best = new System.Collections.Concurrent.ConcurrentDictionary<string, (int Size, JudgingCase Case, string Text)>();
        var n = 0; var limit = int.Parse(Environment.GetEnvironmentVariable("N") ?? "60"); 
        var watch = System.Diagnostics.Stopwatch.StartNew();
        try { JudgingCase.Any.Sample(one =>
        {
            if (watch.Elapsed.TotalSeconds > limit) return;
            string? d;
            try { d = Difference.Of(one); } catch (Exception e) { d = "THREW " + e; }
            Interlocked.Increment(ref n);
            if (d is null) { kinds.AddOrUpdate("agree", 1, (_, k) => k + 1); return; }
            var key = Smaller.Key(d);
            kinds.AddOrUpdate(key, 1, (_, k) => k + 1);
            var size = one.Farm.Events.Length + 3 * one.Farm.Animals.Length + 10 * one.Rulebook.Rules.Length;
            best.AddOrUpdate(key, (size, one, d), (_, b) => b.Size <= size ? b : (size, one, d));
        }, iter: 100000, threads: 1); } catch (CsCheckException e) { Console.Error.WriteLine(e.Message[..Math.Min(500, e.Message.Length)]); }
        Console.Error.WriteLine($"{n} cases in {watch.Elapsed}");
        foreach (var k in kinds.OrderByDescending(k => k.Value)) Console.Error.WriteLine($"{k.Value} x {k.Key}");
        foreach (var b in best.OrderBy(b => b.Value.Size).Take(8))
        {
            var small = Smaller.Of(b.Value.Case);
            Console.Error.WriteLine("=================== " + b.Key + "\n" + Difference.Of(small) + "\n" + small);
        }
    }
}
