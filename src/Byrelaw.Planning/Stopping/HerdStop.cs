namespace Byrelaw.Planning.Stopping;

/// <summary>So many abortions within so few days that nobody is treated and no embryo is put in before a vet has found out why.</summary>
/// <param name="Abortions">Them, by day.</param>
/// <param name="InCalf">How many females were in calf before these days, by their latest test.</param>
public sealed record HerdStop(ImmutableArray<(string Number, LocalDate Date)> Abortions, int InCalf)
{
    /// <summary>What ends a pregnancy, whatever a test said of it.</summary>
    private static readonly string[] Ends = ["calving", "abortion"];

    /// <summary>Within so many days.</summary>
    public const int Within = 30;

    /// <summary>Fewer are no sign of anything.</summary>
    private const int Fewest = 2;

    /// <summary>At least so many of those in calf. Common practice, no source: some cows abort every year without a cause that they share.</summary>
    private const double Share = 0.02;

    /// <summary>The stop; null where nothing gives cause for one, or no abortions are written down.</summary>
    public static HerdStop? Of(Herd herd, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(herd);
        if (herd.Vocabulary.FindKind("abortion")?.Declaration is not EventKind abortion)
        {
            return null;
        }

        var (last, run) = (Day.Number(today), herd.Runs[abortion.Id]);
        var first = last - Within + 1;
        ImmutableArray<(string Number, LocalDate Date)> abortions =
        [
            .. Enumerable.Range(0, herd.Count).SelectMany(animal => run.DaysOf(animal).ToArray().Where(day => day >= first && day <= last).Select(day => (herd.Numbers[animal], Date: Day.Date(day)))).OrderBy(one => one.Date),
        ];
        var inCalf = abortions.Length < Fewest ? 0 : Enumerable.Range(0, herd.Count).Count(animal => WasInCalf(herd, animal, first));
        return abortions.Length >= Fewest && abortions.Length >= Share * inCalf ? new(abortions, inCalf) : null;
    }

    /// <summary>Whether her latest test before a day was pregnant, and nothing on record ended that before it.</summary>
    private static bool WasInCalf(Herd herd, int animal, int day)
    {
        if (herd.Vocabulary.FindKind("pregnancy test")?.Declaration is not TestKind test)
        {
            return false;
        }

        var run = herd.Runs[test.Id];
        for (var i = run.Starts[animal + 1] - 1; i >= run.Starts[animal]; i--)
        {
            if (run.Days[i] < day && run.Answers[i] < test.Answers.Length)
            {
                var tested = run.Days[i];
                return test.Answers[run.Answers[i]] == "pregnant" && !Ends.Any(ends =>
                    herd.Vocabulary.FindKind(ends)?.Declaration is EventKind end && herd.Runs[end.Id].DaysOf(animal).ToArray().Any(ended => ended >= tested && ended < day));
            }
        }

        return false;
    }
}
