namespace Byrelaw.Disk.Tests;

public sealed class WritersTurnTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private string Place => _folder.At("out");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task The_next_waits_until_the_one_before_has_ended()
    {
        var first = WritersTurn.Take(Place);
        var second = Task.Run(() =>
        {
            using var turn = WritersTurn.Take(Place);
            return true;
        });
        (await Task.WhenAny(second, Task.Delay(200))).ShouldNotBe(second);
        first.Dispose();
        (await second).ShouldBeTrue();
        _folder.All().ShouldBeEmpty();
    }

    [Fact]
    public void Who_has_waited_long_enough_gives_up_in_a_sentence()
    {
        using var first = WritersTurn.Take(Place);
        Should.Throw<IOException>(() => WritersTurn.Take(Place, TimeSpan.FromMilliseconds(50))).Message
            .ShouldBe($"another run is writing {Place}; nothing was changed. Try again when it has ended");
    }

    [Fact]
    public void Two_places_do_not_wait_for_each_other()
    {
        using var first = WritersTurn.Take(Place);
        using var other = WritersTurn.Take(_folder.At("out-plan"), TimeSpan.Zero);
        other.ShouldNotBeNull();
    }

    [Fact]
    public void Only_one_of_many_has_the_turn_at_any_time()
    {
        var (inside, most, turns) = (0, 0, 0);
        Parallel.For(0, 200, new ParallelOptions { MaxDegreeOfParallelism = 8 }, _ =>
        {
            using var turn = WritersTurn.Take(Place);
            var now = Interlocked.Increment(ref inside);
            InterlockedMax(ref most, now);
            Thread.SpinWait(2000);
            Interlocked.Decrement(ref inside);
            Interlocked.Increment(ref turns);
        });
        (most, turns).ShouldBe((1, 200));
    }

    [Fact]
    public void What_a_run_that_was_cut_off_left_is_cleared_by_the_next_one_in_the_folder()
    {
        _folder.Write(".pack.byrelaw-lock", "");
        _folder.Write(".pack.byrelaw-new", "half");
        _folder.Write(".out.byrelaw-lock", "");
        _folder.Write(".out.byrelaw-new/index.html", "half");
        _folder.Write(".spring.byre.byrelaw-new", "of a run that we know nothing of: it has no lock");
        using (WritersTurn.Take(_folder.At("other")))
        {
        }

        _folder.All().ShouldBe([".spring.byre.byrelaw-new"]);
    }

    [Fact]
    public void What_a_run_is_writing_now_is_not_cleared()
    {
        using var first = WritersTurn.Take(Place);
        _folder.Write(".out.byrelaw-new/index.html", "half");
        using (WritersTurn.Take(_folder.At("other")))
        {
        }

        File.Exists(_folder.At(".out.byrelaw-new/index.html")).ShouldBeTrue();
    }

    [Fact]
    public void A_folder_moved_aside_by_a_run_that_was_cut_off_comes_back()
    {
        _folder.Write(".out.byrelaw-old/index.html", "last month's");
        _folder.Write(".out.byrelaw-new/index.html", "half");
        using (WritersTurn.Take(Place))
        {
        }

        _folder.All().ShouldBe(["out", "out/index.html"]);
        _folder.Read("out/index.html").ShouldBe("last month's");
    }

    private static void InterlockedMax(ref int most, int now)
    {
        for (var seen = most; now > seen; seen = most)
        {
            Interlocked.CompareExchange(ref most, now, seen);
        }
    }
}
