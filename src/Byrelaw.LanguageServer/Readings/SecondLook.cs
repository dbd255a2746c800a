using System.Runtime.CompilerServices;
using Byrelaw.Checking.Examples;
using Byrelaw.Checking.Trouble;

namespace Byrelaw.LanguageServer.Readings;

/// <summary>
/// Looks again once the typing pauses: tries worked examples and looks for trouble, which takes longer than anyone who types
/// wants to wait. It runs beside the answering of messages and is given up as soon as something changes.
/// </summary>
/// <param name="done">Called, on any thread, when there is something to <see cref="Take"/>.</param>
/// <param name="log">Where it says what went wrong.</param>
internal sealed class SecondLook(Action done, Action<string> log)
{
    // Most people type the next letter sooner than this.
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(250);

    // What was found in a reading holds as long as the reading does: editing one document looks again at that one only.
    private readonly ConditionalWeakTable<RootReading, SecondFindings> _known = [];
    private Run? _underWay;

    /// <summary>Begins, and gives up what is under way. Called from one thread at a time, as are the others.</summary>
    /// <param name="readings">What the open documents say now.</param>
    /// <param name="files">The files as they are now.</param>
    public void Begin(IReadOnlyList<RootReading> readings, EditorFiles files)
    {
        GiveUp();
        var run = _underWay = new Run(new CancellationTokenSource());
        var copy = files.Copy();
        _ = Task.Run(() => LookAsync(readings, copy, run), CancellationToken.None);
    }

    /// <summary>Gives up what is under way: nothing of it is told any more.</summary>
    public void GiveUp()
    {
        _underWay?.Stop.Cancel();
        _underWay = null;
    }

    /// <summary>What was found in what is open now, once; null while that is not known, or has been taken.</summary>
    public IReadOnlyList<SecondFindings>? Take()
    {
        if (_underWay?.Found is not { } found)
        {
            return null;
        }

        _underWay = null;
        return found;
    }

    private async Task LookAsync(IReadOnlyList<RootReading> readings, EditorFiles files, Run run)
    {
        try
        {
            await Task.Delay(Pause, run.Stop.Token);
            var found = new List<SecondFindings>();
            foreach (var reading in readings)
            {
                if (!_known.TryGetValue(reading, out var findings))
                {
                    findings = SecondFindings.Of(reading, Find(reading, files, run.Stop.Token));
                    _known.AddOrUpdate(reading, findings);
                }

                found.Add(findings);
            }

            run.Found = found;
            done();
        }
        catch (OperationCanceledException)
        {
            // Something changed: it is looked at anew.
        }
        catch (Exception exception)
        {
            log($"trying examples and looking for trouble: {exception.GetType().Name}: {exception.Message}");
        }
    }

    /// <summary>All that <c>byrelaw check</c> says beyond what reading alone tells.</summary>
    private static List<Diagnostic> Find(RootReading reading, EditorFiles files, CancellationToken cancelled)
    {
        var read = reading.View.Reading;
        var trouble = TroubleFinder.Find(read.Rulebook, cancelled);
        var examples = ExampleRunner.Run(read, files, cancelled);
        var failed = examples.SelectMany(example => example.Problems.Concat(example.Expectations.Select(expectation => expectation.Failure).OfType<Diagnostic>()));
        return [.. trouble, .. failed];
    }

    /// <summary>One look. (What stops it holds nothing that would have to be given back.)</summary>
    private sealed class Run(CancellationTokenSource stop)
    {
        private volatile IReadOnlyList<SecondFindings>? _found;

        public CancellationTokenSource Stop => stop;

        /// <summary>Null until all is found.</summary>
        public IReadOnlyList<SecondFindings>? Found
        {
            get => _found;
            set => _found = value;
        }
    }
}
