namespace Byrelaw.Planning.Sheets;

/// <summary>The days of transfer: who fits each of them by a heat that is expected of her, and only for embryos about as old as her day.</summary>
internal static class TransferMornings
{
    public static IEnumerable<TransferSheet> Of(Plan plan, SheetHeads heads) =>
        from session in plan.Sessions
        where !session.Session.IsStopped
        let window = session.Session.Days.Window
        from day in session.Session.Days.TransferDays
        where day >= plan.Today
        let sheet = Of(session, day, window, heads)
        where sheet.Animals > 0 || !sheet.ToAsk.IsEmpty || !sheet.Watched.IsEmpty
        select sheet;

    private static TransferSheet Of(NamedSession session, LocalDate day, HeatWindow window, SheetHeads heads)
    {
        return new(day, session, heads.InCalf(day), heads.Reach(ProgrammeLists.Recipients(session.Session.Programme)))
        {
            Rows = Rows(session.Named),
            Spares = Rows(session.StandBy),
            ToAsk = [.. session.ToAsk.Where(animal => !Heats(animal).IsEmpty)],
            Watched = [.. session.Watched.Select(animal => heads.Animal(animal.Animal))],
            Heats = [.. window.Heats.Where(heat => window.ServedBy(heat).Contains(day))],
        };

        ImmutableArray<TransferRow> Rows(ImmutableArray<NamedAnimal> animals) =>
            [.. animals.Select(animal => new TransferRow(heads.Animal(animal.Animal), animal.Method, animal.Start, Heats(animal))).Where(row => !row.Heats.IsEmpty)];

        ImmutableArray<LocalDate> Heats(NamedAnimal animal) => session.Session.Rulebook.Plans.Method(animal.Method) is not { IsNatural: false } method ? []
            : [.. Days(method).Select(one => animal.Start.PlusDays(one)).Where(heat => window.ServedBy(heat).Contains(day)).Order()];
    }

    private static IEnumerable<int> Days(Method method) => method.InHeat is { Days: { IsEmpty: false } days } ? days.Select(one => one.Day) : method.HeatDay is { } day ? [day] : [];
}
