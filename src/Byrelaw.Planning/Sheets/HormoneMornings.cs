namespace Byrelaw.Planning.Sheets;

/// <summary>
/// The mornings on which something is given: day 0 of whoever is named, every later day of hers and of those who are begun, each counted from her own day 0; and devices
/// that come out, whatever is said of her.
/// </summary>
internal sealed class HormoneMornings
{
    private readonly Plan _plan;
    private readonly SheetHeads _heads;
    private readonly Dictionary<(LocalDate Date, int Session), List<HormoneRow>> _rows = [];
    private readonly HashSet<(int Animal, LocalDate Date)> _stands = [];

    private HormoneMornings(Plan plan, SheetHeads heads) => (_plan, _heads) = (plan, heads);

    public static IEnumerable<HormoneSheet> Of(Plan plan, SheetHeads heads)
    {
        var mornings = new HormoneMornings(plan, heads);
        foreach (var session in plan.Sessions)
        {
            mornings.AddThoseNamed(session);
            mornings.AddMorningsOfThoseToAsk(session);
            mornings.AddDonors(session);
        }

        // Whoever is begun and counted nowhere stands on one sheet, though several sessions may be meant.
        foreach (var session in plan.Sessions)
        {
            mornings.AddThoseBegunAndNotNamed(session);
        }

        mornings.AddSecondChances();
        mornings.AddOtherDevices();
        return mornings._rows.Select(one => mornings.Sheet(one.Key.Date, plan.Sessions.First(session => session.Number == one.Key.Session), one.Value));
    }

    private HormoneSheet Sheet(LocalDate date, NamedSession session, List<HormoneRow> rows) => new(date, session, _heads.InCalf(date), _heads.Reach(ProgrammeLists.Treatment(session.Session.Programme)))
    {
        Rows = [.. rows.OrderBy(row => row.Who.Number, AnimalNumberOrder.Instance)],
        Spares = [.. session.StandBy.Where(animal => BeginsOn(animal, date)).Select(animal => Row(animal.Animal, MethodOf(session, animal), animal.Start, 0))],
        ToAsk = [.. session.ToAsk.Where(animal => BeginsOn(animal, date))],
    };

    private bool BeginsOn(NamedAnimal animal, LocalDate date) => !animal.IsBegun && animal.Start == date && _plan.Draft.Rulebook.Plans.Method(animal.Method) is { IsNatural: false };

    private void AddThoseNamed(NamedSession session)
    {
        var treatment = ProgrammeLists.Treatment(session.Session.Programme);
        foreach (var animal in session.Named)
        {
            foreach (var row in RowsOf(animal.Animal, MethodOf(session, animal), animal.Start))
            {
                // Both checks hold on her day 0, or she would not be named; of one who is begun the safety rules were asked on each of her days.
                var isAsked = animal.IsBegun || row.Day == 0;
                Add(session, isAsked || session.Session.Safety.Holds(treatment, animal.Animal, On(row)) ? row : row with { NotGiven = new(null) });
            }
        }
    }

    /// <summary>A morning on which nobody is sure yet is told with those to ask about, and with no row.</summary>
    private void AddMorningsOfThoseToAsk(NamedSession session)
    {
        foreach (var day in session.ToAsk.Select(animal => animal.Start).Distinct().Where(day => day >= _plan.Today && session.ToAsk.Any(animal => BeginsOn(animal, day))))
        {
            RowsOn(day, session);
        }
    }

    private void AddThoseBegunAndNotNamed(NamedSession session)
    {
        foreach (var begun in session.BegunAndNotNamed)
        {
            foreach (var row in RowsOf(begun.Animal, begun.Method, begun.Start))
            {
                Add(session, row with { NotGiven = new(begun) });
            }
        }
    }

    /// <summary>Donors that are made ready for a flush, each by the rules of her own list on each of her days.</summary>
    private void AddDonors(NamedSession session)
    {
        if (session.Session is not { IsStopped: false, Donors: { } donors } || TreatmentCalendar.OfDonors(session.Session.Rulebook.Plans, session.Session.Days) is not { } days)
        {
            return;
        }

        // Nobody is begun who does not surely pass on all of her days; of one whose day 0 is past each day to come is asked for itself.
        var hasBegun = days.Start < _plan.Today;
        foreach (var donor in hasBegun ? donors.Animals.Where(donor => donor.Answer.MayBeUsed()) : session.Session.Collected)
        {
            foreach (var row in RowsOf(donor.Animal, days.Method, days.Start))
            {
                Add(session, row with { IsDonor = true, NotGiven = session.Session.DonorSafety.Holds(donors.Choice, donor.Animal, On(row)) ? null : new(null) });
            }
        }
    }

    /// <summary>The steps of day 0 once more, for whoever was not seen in heat in time.</summary>
    private void AddSecondChances()
    {
        foreach (var one in SecondChances.Of(_plan))
        {
            Add(one.Session, Row(one.Animal.Animal, one.Method, one.Animal.Start, 0) with { Day = Period.DaysBetween(one.Animal.Start, one.Day), IsSecondChance = true });
        }
    }

    /// <summary>A device is due out whoever she is, and one that should be out by now is due today.</summary>
    private void AddOtherDevices()
    {
        foreach (var device in DeviceIn.Of(_plan.Draft.Herd, _plan.Draft.Rulebook.Plans))
        {
            if (device is { Method: { } method, DueOut: { } due } && LocalDate.Max(due, _plan.Today) is var day && !ComesOut(device.Animal, day))
            {
                var step = method.Steps.First(one => one.Device == DeviceMove.Out);
                var row = new HormoneRow(_heads.Animal(device.Animal), method, due.PlusDays(-step.Day), step.Day + Period.DaysBetween(due, day), [.. method.Steps.Where(one => one.Day == step.Day)]);
                Put(day, _plan.Sessions[0], row with { NotGiven = new(null, device.Since) });
            }
        }
    }

    private bool ComesOut(int animal, LocalDate day) => _rows.Any(one => one.Key.Date == day && one.Value.Any(row => row.Who.Animal == animal && row.DeviceComesOut));

    private IEnumerable<HormoneRow> RowsOf(int animal, Method method, LocalDate start) => method.Steps.Select(step => step.Day).Distinct()
        .Where(day => start.PlusDays(day) >= _plan.Today).Select(day => Row(animal, method, start, day));

    private HormoneRow Row(int animal, Method method, LocalDate start, int day) => new(_heads.Animal(animal), method, start, day, [.. method.Steps.Where(step => step.Day == day)]);

    private void Add(NamedSession session, HormoneRow row)
    {
        if (_stands.Add((row.Who.Animal, On(row))))
        {
            Put(On(row), session, row);
        }
    }

    private void Put(LocalDate date, NamedSession session, HormoneRow row) => RowsOn(date, session).Add(row);

    private List<HormoneRow> RowsOn(LocalDate date, NamedSession session)
    {
        if (!_rows.TryGetValue((date, session.Number), out var rows))
        {
            rows = _rows[(date, session.Number)] = [];
        }

        return rows;
    }

    private static LocalDate On(HormoneRow row) => row.Start.PlusDays(row.Day);

    private static Method MethodOf(NamedSession session, NamedAnimal animal) => session.Methods.FirstOrDefault(method => method.Method.Name == animal.Method)?.Method ?? session.Session.Rulebook.Plans.Method(animal.Method)!;
}
