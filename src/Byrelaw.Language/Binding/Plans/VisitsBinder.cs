namespace Byrelaw.Language.Binding.Plans;

/// <summary>Binds <c>visits</c>. They name no date of the programme, whose own dates may hang on them.</summary>
internal static class VisitsBinder
{
    private static readonly string[] DaysOffInWords = ["Mondays", "Tuesdays", "Wednesdays", "Thursdays", "Fridays", "Saturdays", "Sundays", "holidays"];

    /// <summary>All visits of all files.</summary>
    public static ImmutableArray<Visits> Bind(IReadOnlyList<RuleFile> files, Namespace names)
    {
        var all = new Layered<Visits>("add `because \"...\"`");
        var places = new List<(AfterVisitsSyntax Syntax, RuleFile File)>();
        foreach (var file in files)
        {
            foreach (var block in file.Blocks.Where(block => block is { Kind: BlockKind.Visits, Head: not null }))
            {
                var visits = Bind(new Context(names, file.Problems), block);
                var region = visits.Region is null ? "" : $" in {visits.Region}";
                all.Add(NameFolding.Fold($"{visits.Name}|{visits.Region}"), visits.Name + region, file, block.Span, block.First<BecauseLine>() is not null, visits);
                places.AddRange(Schedules(block).OfType<AfterVisitsSyntax>().Select(syntax => (syntax, file)));
            }
        }

        var bound = all.Resolve().ToImmutableArray();
        foreach (var (syntax, file) in places)
        {
            if (!bound.Any(visits => NameFolding.Fold(visits.Name) == NameFolding.Fold(syntax.Name.Value)))
            {
                file.Problems.Add(VisitProblems.UnknownVisits(
                    syntax.Name.Span, syntax.Name.Value, NearestName.To(syntax.Name.Value, bound.Select(visits => visits.Name))));
            }
        }

        foreach (var visits in bound.Where(visits => ComesAfterItself(bound, visits)))
        {
            files.First(file => file.Source == visits.Span.File).Problems.Add(VisitProblems.Circle(visits.Span, visits.Name));
        }

        return bound;
    }

    private static Visits Bind(Context context, Block block)
    {
        var head = (VisitsLine)block.Head!;
        var schedules = Schedules(block).Select(syntax => Schedule(context, syntax)).OfType<VisitSchedule>().ToImmutableArray();
        if (!block.IsBroken && !Schedules(block).Any())
        {
            context.Problems.Add(VisitProblems.NoSchedule(block.Span));
        }

        var off = block.Lines.OfType<NotOnLine>().SelectMany(line => line.Days).ToList();
        var weekdays = new List<IsoDayOfWeek>();
        var isOffOnHolidays = false;
        foreach (var word in off.Select(day => day.Word).OfType<Syntax.NameSyntax>())
        {
            var folded = NameFolding.Fold(word.Text);
            if (folded is "holiday" or "holidays")
            {
                isOffOnHolidays = true;
            }
            else if (Weekday(folded) is { } weekday)
            {
                weekdays.Add(weekday);
            }
            else
            {
                context.Problems.Add(VisitProblems.UnknownDayOff(word.Span, NearestName.To(word.Text, DaysOffInWords)));
            }
        }

        ImmutableArray<LocalDate> dates = [.. off.Select(day => day.Date?.Value).OfType<LocalDate>().Distinct().Order()];
        return new Visits(
            head.Name.Value, head.Region?.Value, schedules, new DaysOff(dates, [.. weekdays.Distinct().Order()], isOffOnHolidays), block.Span);
    }

    private static IEnumerable<ScheduleSyntax> Schedules(Block block) =>
        new[] { ((VisitsLine)block.Head!).Schedule }.OfType<ScheduleSyntax>().Concat(block.Lines.OfType<ScheduleLine>().Select(line => line.Schedule));

    private static VisitSchedule? Schedule(Context context, ScheduleSyntax syntax)
    {
        switch (syntax)
        {
            case EverySyntax every:
                if (every.To.Value < every.From.Value)
                {
                    return context.Fail<VisitSchedule>(VisitProblems.Backwards(every.From.Span.To(every.To.Span)));
                }

                return context.Length(every.Every) is not { } length ? null
                    : length.Count == 0 ? context.Fail<VisitSchedule>(PlanProblems.NotACount(every.Every.Span, "at least 1 day"))
                    : new EveryVisit(length, every.From.Value, every.To.Value);
            case OnDatesSyntax dates:
                return new VisitDates([.. dates.Dates.Select(date => date.Value).Distinct().Order()]);
            case AfterVisitsSyntax after:
                return context.Length(after.Wait) is { } wait ? new AfterVisits(wait, after.Name.Value) : null;
            default:
                return null;
        }
    }

    private static bool ComesAfterItself(ImmutableArray<Visits> all, Visits start)
    {
        var seen = new HashSet<string>();
        var open = new Stack<Visits>([start]);
        while (open.TryPop(out var visits))
        {
            foreach (var name in visits.Schedules.OfType<AfterVisits>().Select(after => NameFolding.Fold(after.Name)))
            {
                if (name == NameFolding.Fold(start.Name))
                {
                    return true;
                }

                if (seen.Add(name))
                {
                    foreach (var next in all.Where(other => NameFolding.Fold(other.Name) == name))
                    {
                        open.Push(next);
                    }
                }
            }
        }

        return false;
    }

    private static IsoDayOfWeek? Weekday(string folded) => folded.TrimEnd('s') switch
    {
        "monday" => IsoDayOfWeek.Monday,
        "tuesday" => IsoDayOfWeek.Tuesday,
        "wednesday" => IsoDayOfWeek.Wednesday,
        "thursday" => IsoDayOfWeek.Thursday,
        "friday" => IsoDayOfWeek.Friday,
        "saturday" => IsoDayOfWeek.Saturday,
        "sunday" => IsoDayOfWeek.Sunday,
        _ => null,
    };
}
