namespace Byrelaw.Reporting.Explaining;

/// <summary>One thing to do for an animal that is asked about: any of the ways is enough for the rules that ask for it.</summary>
/// <param name="Rules">The rules.</param>
/// <param name="Ways">Each with the records that it takes, which are as few as they can be; what can be done beside her first.</param>
public sealed record Job(ImmutableArray<string> Rules, ImmutableArray<ImmutableArray<Missing>> Ways)
{
    /// <summary>Of more ways than so many nobody chooses.</summary>
    private const int MostWays = 3;

    /// <summary>All that must be done for her, in the order of the rules; what does for one rule and for another too is one job.</summary>
    public static IReadOnlyList<Job> Of(AnimalReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var jobs = new List<Job>();
        foreach (var job in report.Animal.Open.Select(question => Of(question, report)).OrderBy(job => job.Ways.Length))
        {
            var place = jobs.FindIndex(job.IsDoneBy);
            if (place < 0)
            {
                jobs.Add(job);
            }
            else
            {
                jobs[place] = jobs[place].With(job);
            }
        }

        var order = report.Animal.Open.Select(question => question.Rule).ToList();
        return [.. jobs.OrderBy(job => job.Rules.Min(rule => order.IndexOf(rule)))];
    }

    /// <summary>As a thing to get: <c>an ovary check result, or line 1693, which cannot be read</c>.</summary>
    public string Told(ListReport list) => string.Join(", or ", Ways.Select(way => MissingWords.AllOf(way, list, " and ")));

    private static Job Of(OpenQuestion question, AnimalReport report)
    {
        var isPassed = report.Animal.Rules.Any(rule => rule.Name == question.Rule && rule.Rule?.IfNotKnown == IfNotKnown.Pass);
        question = isPassed ? question with { Ways = [.. question.Ways.Select(Loud)] } : question;
        var inTime = question.Ways.Where(way => way.All(missing => !report.On.IsPast(report.LastDayFor(missing)))).ToList();
        var ways = (inTime.Count > 0 ? inTime : [.. question.Ways]).Select(way => (Way: way, Records: Asked.Of(way).Count)).ToList();
        var fewest = ways.Min(way => way.Records);
        return new Job([question.Rule], [.. ways.Where(way => way.Records == fewest).Select(way => way.Way).OrderByDescending(IsBesideHer).Take(MostWays)]);
    }

    /// <summary>A rule that passes silence asks only for what is there and does not say: the result that is awaited, the row that nobody can read.</summary>
    private static ImmutableArray<Missing> Loud(ImmutableArray<Missing> way)
    {
        var loud = way.RemoveAll(missing => missing.Reason is MissingReason.NotKept or MissingReason.NeverRecorded or MissingReason.NoResult or MissingReason.FactMissing);
        return loud.IsEmpty ? way : loud;
    }

    private static bool IsBesideHer(ImmutableArray<Missing> way) => way.All(missing => missing is { Reason: MissingReason.NoResult, SettledBy: SettledBy.Yards });

    /// <summary>Whether whichever way the other is done, this is done too.</summary>
    private bool IsDoneBy(Job other) => other.Ways.All(way => Ways.Any(own => IsWithin(own, way)));

    private Job With(Job done) => new([.. Rules, .. done.Rules], [.. Ways.Select(way => way.AddRange(done.Ways.First(own => IsWithin(own, way)).Where(missing => !way.Contains(missing))))]);

    private static bool IsWithin(ImmutableArray<Missing> way, ImmutableArray<Missing> other) => way.All(missing => other.Any(one => Asked.IsOneThing(one, missing)));
}
