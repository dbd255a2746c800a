using Byrelaw.Records.Sources;
using NodaTime.Text;

namespace Byrelaw.Records.Ade;

/// <summary>
/// Lays the messages of the exchange out as rows with headings, which the lines of the layout read like any others. A message that its sender withdrew is no row, and
/// of two with one number the one changed last is; where nobody says which that is, and they say different things, the one before is in doubt.
/// </summary>
internal sealed class AdeTables
{
    private static readonly string[] OfAnimals = ["animal", "born", "sex", "breed", "tag", "mob", "herd"];
    private static readonly string[] OfEvents = ["what", "animal", "date", "value", "method", "sire", "ease", "remark", "herd"];

    private readonly IReadOnlyList<(string Shown, IReadOnlyList<AdeResource> Resources)> _files;
    private readonly Dictionary<string, (string Name, string Purpose)> _sets = new(StringComparer.Ordinal);
    private readonly Dictionary<(string Type, string Id, string Sender), AdeResource> _latest = [];
    private readonly HashSet<AdeResource> _disputed = new(ReferenceEqualityComparer.Instance);
    private readonly AdeMobs _mobs;
    private readonly DateTimeZone? _zone;
    private readonly FrozenSet<string> _read;

    /// <summary>Takes the messages of all files.</summary>
    /// <param name="files">As shown, with their messages.</param>
    /// <param name="source">What the farm says of them.</param>
    public AdeTables(IReadOnlyList<(string Shown, IReadOnlyList<AdeResource> Resources)> files, RecordSource source)
    {
        _files = files;
        _zone = source.TimesIn is { } zone ? DateTimeZoneProviders.Tzdb.GetZoneOrNull(zone) : null;
        _read = source.Columns.Where(column => column.What is LandedTarget { Column: "kind" }).SelectMany(column => column.Cells).Select(cell => cell.Cell).ToFrozenSet(StringComparer.OrdinalIgnoreCase);
        foreach (var resource in files.SelectMany(file => file.Resources))
        {
            if (resource.Type == "AnimalSet")
            {
                _sets[resource.Text("id")] = (AdeMobs.Name(resource), resource.Text("purpose"));
            }
        }

        foreach (var resource in files.SelectMany(file => file.Resources))
        {
            Note(resource);
        }

        DisputeWhereNobodySaysWhose(files.SelectMany(file => file.Resources));

        _mobs = new AdeMobs(files.SelectMany(file => file.Resources).Where(resource => resource.Type == "AnimalSet" && Stands(resource)), _disputed);
    }

    /// <summary>Keeps of messages with one number the one that stands.</summary>
    private void Note(AdeResource resource)
    {
        var key = Key(resource);
        if (key.Id.Length == 0)
        {
            return;
        }

        if (!_latest.TryGetValue(key, out var other))
        {
            _latest.Add(key, resource);
            return;
        }

        var isLater = IsLater(resource, other);
        var (stands, falls) = isLater ? (resource, other) : (other, resource);
        _latest[key] = stands;
        if (!falls.IsDeleted && MayBeTwo(stands, falls, stands == resource))
        {
            _disputed.Add(falls);
        }
    }

    /// <summary>
    /// Whether two messages may be two, though their sender gave them one number: they say different things and nobody says which was later; or one withdraws, and names another animal or is not
    /// the later one.
    /// </summary>
    private bool MayBeTwo(AdeResource stands, AdeResource falls, bool standsLater) => stands.IsDeleted
        ? (stands.Text("animal", "id") is { Length: > 0 } animal && animal != falls.Text("animal", "id")) || !(AreDated(stands, falls) || (standsLater && (stands.Modified is null || stands.Modified != falls.Modified)))
        : !AreDated(stands, falls) && Said(stands) != Said(falls);

    /// <summary>A number is its sender's. Where one message with it says whose it is and another does not, each may be either's.</summary>
    private void DisputeWhereNobodySaysWhose(IEnumerable<AdeResource> resources)
    {
        foreach (var alike in resources.Where(resource => resource.Text("id").Length > 0).GroupBy(resource => (resource.Type, resource.Text("id"))))
        {
            if (alike.DistinctBy(resource => resource.Sender).Count() > 1 && alike.Any(resource => resource.Sender.Length == 0))
            {
                _disputed.UnionWith(alike.Where(resource => !resource.IsDeleted));
            }
        }
    }

    private static (string Type, string Id, string Sender) Key(AdeResource resource) => (resource.Type, resource.Text("id"), resource.Sender);

    private string Said(AdeResource resource) => resource.Type == "AnimalSet" ? AdeMobs.Said(resource) : string.Join('|', Animal(resource).Concat(Event(resource)).Select(row => row.Text));

    private static bool AreDated(AdeResource one, AdeResource other) => one.Modified is { } first && other.Modified is { } second && first != second;

    /// <summary>A table of a file.</summary>
    public IEnumerable<SourceTable> Of(SourceRows rows)
    {
        foreach (var (shown, resources) in _files)
        {
            var all = resources.Where(Stands).SelectMany(resource => rows == SourceRows.Animals ? Animal(resource) : Event(resource)).ToList();
            var headings = rows == SourceRows.Animals ? OfAnimals : OfEvents;
            yield return new SourceTable(shown, headings, string.Join(',', headings), 1, all);
        }
    }

    /// <summary>Of two messages that nobody dates the later one in the files stands; a withdrawal always does.</summary>
    private static bool IsLater(AdeResource one, AdeResource other) =>
        one.Modified is not { } first || other.Modified is not { } second || first == second ? one.IsDeleted || !other.IsDeleted : first > second;

    private bool Stands(AdeResource resource) =>
        !resource.IsDeleted && (resource.Text("id").Length == 0 || ReferenceEquals(_latest[Key(resource)], resource) || _disputed.Contains(resource));

    private IEnumerable<SourceRow> Animal(AdeResource resource)
    {
        if (resource.Type == "AnimalCore")
        {
            yield return Row(resource, resource.Text("identifier", "id"), Date(resource.Text("birthDate")), resource.Text("gender"), resource.Text("primaryBreed", "id"), resource.Text("managementTag"), _mobs.Of(resource.Text("identifier", "id")), resource.Text("location", "id"));
        }
    }

    private IEnumerable<SourceRow> Event(AdeResource resource)
    {
        if (resource.Type is "AnimalCore" or "AnimalSet")
        {
            foreach (var status in AdeStatus.Of(resource))
            {
                // A status is of the day on which its message was written; one that does not say when is of any.
                var written = resource.Text("meta", "modified");
                yield return Row(resource, status, resource.Text("identifier", "id"), written.Length == 0 ? Unreadable.Of("") : Date(written), "", "", "", "", "", resource.Text("location", "id"));
            }

            yield break;
        }

        var (result, method) = (resource.Text("result"), resource.Text("method"));
        var (set, purpose) = resource.Type is "AnimalSetJoin" or "AnimalSetLeave" ? _sets.GetValueOrDefault(resource.Text("animalSetId"), (resource.Text("animalSetId"), "")) : ("", "");
        var what = resource.Type switch
        {
            "Insemination" => resource.Text("inseminationType"),
            "Heat" when AdeStatus.MayBeAService(resource) => Unreadable.Of("Heat"),
            "LactationStatusObserved" => AdeStatus.Lactation(resource.Text("observedStatus")),
            "Lactation" when resource.Text("endDate").Length > 0 && !_read.Contains("Lactation") => "Lactation ends",
            "Heat" => resource.Text("certainty") is "" or "InHeat" ? "Heat" : $"Heat {resource.Text("certainty")}",
            // A set for feeding or a session is no mob; one of which nobody says what it is for may be.
            "AnimalSetJoin" or "AnimalSetLeave" => purpose is "Enclosure" or "" ? "Mob" : "Left out",
            "" => Unreadable.Of(""),
            var type when AdeTypes.IsPassedOver(type) && !_read.Contains(type) => "Left out",
            var type => type,
        };
        what = _disputed.Contains(resource) && what != "Left out" ? Unreadable.Of(what) : what;
        var value = resource.Type switch
        {
            // Nobody has seen that a cow is empty by looking at her, nor by a way that nobody knows.
            "PregnancyCheck" => result == "Empty" && (AdeStatus.HasACalf(resource) || method is not ("Echography" or "Palpation" or "Blood" or "Milk")) ? "Unknown" : result,
            // Which mob she is in after she left one, or by a set that nobody names, is not known.
            "AnimalSetJoin" when purpose == "Enclosure" => set,
            "AnimalSetJoin" or "AnimalSetLeave" => Unreadable.Of(set),
            _ => "",
        };
        var sire = resource.Text("sireOfficialName") is { Length: > 0 } name ? name : FirstSire(resource);
        yield return Row(resource, what, resource.Text("animal", "id"), Date(resource.Text(what == "Lactation ends" ? "endDate" : "eventDateTime")), value, resource.Type == "PregnancyCheck" ? method : "", sire, resource.Text("calvingEase"), resource.Text("remark"), resource.Text("location", "id"));
        if (what == "RunWithBull" && resource.Text("eventEndDateTime") is { Length: > 0 } end)
        {
            yield return Row(resource, "RunWithBull ends", resource.Text("animal", "id"), Date(end), "", "", "", "", "", resource.Text("location", "id"));
        }
    }

    private static string FirstSire(AdeResource resource) =>
        resource.Body.TryGetProperty("sireIdentifiers", out var sires) && sires.ValueKind == System.Text.Json.JsonValueKind.Array && sires.GetArrayLength() > 0
            ? new AdeResource(0, "", sires[0]).Text("id") : "";

    private static SourceRow Row(AdeResource resource, params string[] cells) => new(resource.Number, cells, string.Join(',', cells.Select(cell => Unreadable.Unmarked(cell).Replace(',', ' '))).AsMemory());

    /// <summary>
    /// The day of a time (RFC 3339): where the farm says in which zone its days are, there; one that names no other place is the farm's own. What is told for Greenwich only, and no zone, names no day.
    /// </summary>
    private string Date(string time)
    {
        if (time.Length == 0)
        {
            return "";
        }

        if (LocalDatePattern.Iso.Parse(time) is { Success: true } day)
        {
            return LocalDatePattern.Iso.Format(day.Value);
        }

        if (LocalDateTimePattern.ExtendedIso.Parse(time) is { Success: true } local)
        {
            return LocalDatePattern.Iso.Format(local.Value.Date);
        }

        var offset = OffsetDateTimePattern.ExtendedIso.Parse(time);
        return !offset.Success ? Unreadable.Of(time)
            : _zone is not null ? LocalDatePattern.Iso.Format(offset.Value.InZone(_zone).Date)
            : offset.Value.Offset != Offset.Zero ? LocalDatePattern.Iso.Format(offset.Value.Date)
            : Unreadable.Of(time);
    }
}
