namespace Byrelaw.Language.Binding.Plans;

/// <summary>Binds what a programme wants and how it is to be planned.</summary>
internal sealed class AimsBinder(Context context, Block block)
{
    private const int LastCycleDay = 21;

    /// <summary>The public holidays of a programme: those of its list, and those it names itself.</summary>
    public static ImmutableArray<Holiday> Holidays(RuleFile root, Block? programme)
    {
        var holidays = programme?.Lines.OfType<HolidayLine>().Select(line => new Holiday(line.Day.Value, line.Name.Value)).ToList() ?? [];
        if (programme?.First<HolidaysLine>() is { } list)
        {
            if (root.HolidayLists.GetValueOrDefault(list.Path.Value) is var (shown, bytes))
            {
                holidays.AddRange(HolidayList.Read(shown, bytes, root.Problems));
            }
            else
            {
                root.Problems.Add(VisitProblems.NoHolidayFile(list.Path.Span));
            }
        }

        return [.. holidays.Distinct().OrderBy(holiday => holiday.Date).ThenBy(holiday => holiday.Name, StringComparer.Ordinal)];
    }

    /// <summary>Binds all of it.</summary>
    public Aims Bind(CollectionDays collections, ImmutableArray<Holiday> holidays, PlanStatements plans)
    {
        var recipientDays = RecipientDays();
        var embryos = block.First<EmbryosLine>();
        var origin = embryos?.Origin ?? (collections.First is null && collections.OnAVisit is null ? EmbryoOrigin.Frozen : EmbryoOrigin.CollectedEggs);
        if (embryos is not null && !block.IsBroken)
        {
            CheckOrigin(embryos, collections);
        }

        var preparations = Preparations(plans);
        var donorMethod = block.Lines.OfType<PrepareLine>().Where(line => line.IsForDonors).SelectMany(line => line.Methods)
            .Select(name => Method(plans, name, isForDonors: true)).OfType<Method>().FirstOrDefault();
        return new Aims
        {
            Embryos = origin,
            InTheTank = block.First<TankLine>() is { } tank ? context.Whole(tank.Count, 0, 100_000, "a number of embryos") ?? 0 : 0,
            TankIsSexed = block.First<TankLine>()?.IsSexed ?? false,
            EmbryoAge = embryos?.Age is { } age ? context.WholeDays(age, 5, 9, "the age of an embryo") ?? 7
                : origin == EmbryoOrigin.Flushed && donorMethod is { FlushDay: { } flush, HeatDay: { } heat } ? flush - heat : 7,
            Wants = Wants(),
            Budget = block.First<BudgetLine>() is { } budget ? context.Money(budget.Amount) : null,
            Shared = new CostsSharedBinder(context, block).Bind(),
            Agreement = block.First<AgreedByLine>() is { } agreed ? new Agreement([.. agreed.By.Select(by => by.Value)], agreed.On.Value) : null,
            Collections = collections.All,
            OnAVisit = collections.OnAVisit,
            Repeat = collections.Repeat,
            RecipientDayFrom = recipientDays.From,
            RecipientDayTo = recipientDays.To,
            WithinDaysOfEmbryo = block.First<RecipientDaysLine>()?.Within is { } within ? context.WholeDays(within, 0, LastCycleDay, "how near her day is to the embryo's age") ?? Aims.UsualWithinDays : Aims.UsualWithinDays,
            Recipients = preparations,
            Bookings = new BookingBinder(context, block).Bind(plans, collections),
            DonorMethod = donorMethod?.Name,
            Semen = block.First<SemenLine>()?.Semen ?? Semen.Unsexed,
            CalfBreeds = block.First<CalvesLine>() is { } calves ? [.. calves.Breeds.Select(breed => breed.Text)] : [],
            Region = block.First<RegionLine>()?.Region.Value,
            CalveBy = block.First<CalveByLine>()?.Day.Value,
            Holidays = holidays,
            HolidayFile = block.First<HolidaysLine>()?.Path.Value,
        };
    }

    private void CheckOrigin(EmbryosLine line, CollectionDays collections)
    {
        var hasCollection = collections.First is not null || collections.OnAVisit is not null;
        if (line.Origin == EmbryoOrigin.Frozen && hasCollection)
        {
            context.Problems.Add(AimProblems.FrozenWithCollection(line.Span));
        }
        else if (line.Origin != EmbryoOrigin.Frozen && !hasCollection)
        {
            context.Problems.Add(AimProblems.NothingCollected(line.Span));
        }

        if (line.Origin != EmbryoOrigin.Frozen && line.Age is not null)
        {
            context.Problems.Add(AimProblems.AgeFollows(line.Age.Span, line.Span));
        }
    }

    private Want? Wants()
    {
        if (block.First<WantsLine>() is not { } line)
        {
            return null;
        }

        var count = context.Whole(line.Count, 1, 100_000, "how many are wanted");
        if (line.Sure.Value is <= 0 or >= 100)
        {
            return context.Fail<Want>(PlanProblems.NotACount(line.Sure.Span, "how sure to be, above 0% and below 100%: nothing alive is certain"));
        }

        return count is { } wanted ? new Want(wanted, line.What, line.Sure.Value / 100, line.Span) : null;
    }

    private (int From, int To) RecipientDays()
    {
        if (block.First<RecipientDaysLine>() is not { } line)
        {
            return (6, 8);
        }

        var from = Day(line.From);
        var to = line.To is null ? from : Day(line.To);
        if (to < from)
        {
            context.Problems.Add(VisitProblems.Backwards(line.From.Span.To(line.To!.Span)));
            return (6, 8);
        }

        return from is { } first && to is { } last ? (first, last) : (6, 8);
    }

    private ImmutableArray<Preparation> Preparations(PlanStatements plans)
    {
        var all = ImmutableArray.CreateBuilder<Preparation>();
        foreach (var line in block.Lines.OfType<PrepareLine>().Where(line => !line.IsForDonors))
        {
            var count = line.Count is null ? null : context.Whole(line.Count, 1, 100_000, "a number of recipients");
            if (line.Count is not null && line.Methods.Length > 1)
            {
                context.Problems.Add(AimProblems.CountForSeveral(line.Count.Span));
            }

            foreach (var name in line.Methods)
            {
                if (Method(plans, name, isForDonors: false) is not { } method)
                {
                    continue;
                }

                if (all.FirstOrDefault(one => one.Method == method.Name) is { } twice)
                {
                    context.Problems.Add(PlanProblems.Twice(name.Span, method.Name, twice.Span));
                }
                else
                {
                    all.Add(new Preparation(method.Name, count, name.Span));
                }
            }
        }

        return all.ToImmutable();
    }

    private Method? Method(PlanStatements plans, TextSyntax name, bool isForDonors)
    {
        if (plans.Method(name.Value) is not { } method)
        {
            return context.Fail<Method>(AimProblems.UnknownMethod(
                name.Span, name.Value, [.. plans.Methods.Where(one => one.IsForDonors == isForDonors).Select(one => one.Name)]));
        }

        return method.IsForDonors == isForDonors ? method
            : context.Fail<Method>(AimProblems.MethodForOthers(name.Span, method.Name, method.IsForDonors));
    }

    private int? Day(NumberSyntax number)
    {
        if (number.Value is >= 0 and <= LastCycleDay && number.Value == Math.Floor(number.Value))
        {
            return (int)number.Value;
        }

        return context.None<int>(AimProblems.DayNotWhole(number.Span, LastCycleDay));
    }
}
