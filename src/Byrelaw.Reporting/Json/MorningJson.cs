using Byrelaw.Planning.Naming;
using Byrelaw.Planning.Sheets;

namespace Byrelaw.Reporting.Json;

/// <summary>What is done on one morning for one session, of one kind of work, by what is known now.</summary>
/// <param name="Date">The morning.</param>
/// <param name="Session">For which session.</param>
/// <param name="Work">Which kind of work.</param>
/// <param name="RecordsEnd">Up to which day all is written down that the safety rules look at; null where nobody knows.</param>
/// <param name="Animals">Those that stand on it.</param>
/// <param name="Spares">Those for whoever is left out, the best first.</param>
/// <param name="ToAsk">Those of whom something is to be found out first.</param>
/// <param name="TakeAsInCalf">Whom to take as in calf that morning, of all.</param>
/// <param name="MayBeInCalf">Who may be.</param>
public sealed record MorningJson(
    string Date, int Session, string Work, string? RecordsEnd, IReadOnlyList<MorningAnimalJson> Animals, IReadOnlyList<MorningAnimalJson> Spares, IReadOnlyList<string> ToAsk,
    IReadOnlyList<string> TakeAsInCalf, IReadOnlyList<string> MayBeInCalf)
{
    internal static MorningJson Of(MorningSheet sheet)
    {
        var (animals, spares, asked) = sheet switch
        {
            HormoneSheet hormones => (hormones.Rows.Select(Of), hormones.Spares.Select(Of), hormones.ToAsk),
            TransferSheet transfer => (transfer.Rows.Select(Of), transfer.Spares.Select(Of), transfer.ToAsk),
            FindingSheet found => (found.Rows.Select(row => new MorningAnimalJson(row.Who.Number, null, null, null, false, false, [.. row.Records.Select(one => one.Kind.Name)], [])), [], []),
            _ => throw new NotSupportedException(sheet.GetType().Name),
        };
        return new(
            Iso(sheet.Date), sheet.Session.Number, Keys.Snake($"{sheet.Work}"), sheet.RecordsEnd is { } end ? Iso(end) : null, [.. animals], [.. spares], [.. asked.Select(animal => animal.Number)],
            sheet.InCalf.Take, sheet.InCalf.MayBe);
    }

    private static MorningAnimalJson Of(HormoneRow row) => new(
        row.Who.Number, row.Method.Name, Iso(row.Start), row.Day, row.IsGiven, row.DeviceComesOut, row.IsGiven ? [.. row.Steps.Select(step => step.Text)] : [], []);

    private static MorningAnimalJson Of(TransferRow row) => new(row.Who.Number, row.Method, Iso(row.Start), null, false, false, [], [.. row.Heats.Select(Iso)]);

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);
}

/// <summary>An animal on a morning's sheet.</summary>
/// <param name="Animal">Her number.</param>
/// <param name="Method">Her method; null where nothing is given.</param>
/// <param name="DayZero">Her own day 0.</param>
/// <param name="Day">The day of the method, counted from it.</param>
/// <param name="Given">Whether she stands to be given something.</param>
/// <param name="DeviceOut">Whether a device comes out.</param>
/// <param name="What">What is given, or found out.</param>
/// <param name="Heats">Of a transfer: heats that are expected and fit the day.</param>
public sealed record MorningAnimalJson(string Animal, string? Method, string? DayZero, int? Day, bool Given, bool DeviceOut, IReadOnlyList<string> What, IReadOnlyList<string> Heats);
