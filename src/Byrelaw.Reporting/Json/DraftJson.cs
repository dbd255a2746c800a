using System.Text.Encodings.Web;
using System.Text.Json.Serialization;
using Byrelaw.Reporting.Log;

namespace Byrelaw.Reporting.Json;

/// <summary>A draft for programs. Keys are stable; a value that is not there is null.</summary>
public sealed record DraftJson(
    string Programme, string JudgedWith, string Rulebook, string Records, string KnownDay,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] InputsJson? Inputs,
    IReadOnlyList<DoubtJson> Doubts, IReadOnlyList<ListJson> Lists)
{
    /// <summary>Sheets that are not wholly on record, by number; left out where there is none.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<string>? OpenSheets { get; init; }

    /// <summary>What is supposed to stand in the book, as it was written; left out where nothing is.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<string>? Supposed { get; init; }
}

/// <summary>What a draft was drawn up from, so that it can be judged again.</summary>
/// <param name="ProgrammeFile">Relative to the report's folder, or to where people work where there is none.</param>
/// <param name="RecordsFolder">The same.</param>
/// <param name="On">The day given with <c>--on</c>.</param>
/// <param name="KnownOn">The day given with <c>--known-on</c>.</param>
public sealed record InputsJson(string ProgrammeFile, string RecordsFolder, string? On, string? KnownOn)
{
    /// <summary>The session given with <c>--session</c>; left out where all were judged.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public int? Session { get; init; }

    /// <summary>The herd given with <c>--herd</c>; left out where the records hold one.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Herd { get; init; }

    /// <summary>Which animals have a page, as given with <c>--pages</c>; left out where the herd's size decides.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Pages { get; init; }

    /// <summary>The day given with <c>--records-to</c>; left out where the farm's file says how far the records reach.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? RecordsTo { get; init; }
}

/// <summary>One list.</summary>
public sealed record ListJson(
    string List, int? Session, string JudgedFrom, string JudgedTo, CountsJson Counts, IReadOnlyList<AnimalJson> Animals)
{
    /// <summary>What is planned before its days and taken as done; left out where nothing is.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<PlannedJson>? Planned { get; init; }
}

/// <summary>A collection that is planned and not on record.</summary>
public sealed record PlannedJson(string Date, string Animal, string Kind);

/// <summary>How many have each answer.</summary>
public sealed record CountsJson(int Ready, int OnCourse, int Later, int Ask, int No);

/// <summary>One animal on one list.</summary>
public sealed record AnimalJson(
    string Animal, string Answer, string? ReadyFrom, string? ReadyUntil, string? NotBefore, double Score,
    IReadOnlyList<string> InTheWay, IReadOnlyList<MissingJson> Settle, IReadOnlyList<MissingJson> ThenAsk, IReadOnlyList<RuleJson> Rules)
{
    /// <summary><c>take_as_in_calf</c> or <c>may_be_in_calf</c>; left out where neither is told.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? InCalf { get; init; }
}

/// <summary>A record that would settle an Ask, or that is still to be asked for of a Later.</summary>
public sealed record MissingJson(string Record, string Reason, string? From, string? To, string SettledBy, int? Line, int? Needed);

/// <summary>One rule's answer.</summary>
public sealed record RuleJson(
    string Rule, string Answer, bool Expected, string? TurnsOn, string Found, string Basis, IReadOnlyList<EvidenceJson> Evidence);

/// <summary>A record an answer rests on.</summary>
public sealed record EvidenceJson(string Kind, string? Date, string File, int Line)
{
    /// <summary>The cell, where the file is a workbook's sheet; left out where it is none.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Cell { get; init; }

    /// <summary>What more is on record of the entry; left out where nothing is.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Details { get; init; }
}

/// <summary>Problems in files, for programs.</summary>
public sealed record ProblemsJson(IReadOnlyList<ProblemJson> Problems);

/// <summary>Problems in records, and what of them is doubted, for programs.</summary>
public sealed record RecordsJson(
    IReadOnlyList<ProblemJson> Problems, IReadOnlyList<ProblemCauseJson> Causes, int Animals, RecordCountsJson Counts, IReadOnlyList<KindJson> Kinds, IReadOnlyList<PromisedKindJson> Promises, IReadOnlyList<DoubtJson> Doubts)
{
    /// <summary>The farm's embryos; left out where it lists none.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<EmbryoJson>? Embryos { get; init; }
}

/// <summary>One reason why rows cannot be read, for programs; <c>AloneInAsk</c> counts the animals that it alone keeps in Ask, and is null where that was not tried.</summary>
public sealed record ProblemCauseJson(string Code, string File, string Found, string? Mend, int Rows, int Animals, IReadOnlyList<int> Lines, int? AloneInAsk);

/// <summary>Problems in files, and what of each rule no worked example shows, for programs.</summary>
public sealed record CheckJson(IReadOnlyList<ProblemJson> Problems, IReadOnlyList<CoverageJson> Coverage);

/// <summary>What worked examples show of one rule.</summary>
public sealed record CoverageJson(string Rule, string List, string File, int Line, bool HasExample, IReadOnlyList<string> NotShown);

/// <summary>One problem. Its example, where there is one, is the lines that show it on a made-up animal.</summary>
public sealed record ProblemJson(
    string Code, string Severity, string File, int Line, int Column, int Length, string Found, string? Expected, string? Help, CorrectionJson? Correction,
    IReadOnlyList<string>? Example);

/// <summary>A change that mends a problem.</summary>
public sealed record CorrectionJson(string Title, IReadOnlyList<ReplacementJson> Replacements);

/// <summary>New text in the place of some old one.</summary>
public sealed record ReplacementJson(string File, int Line, int Column, int Length, string Text);

/// <summary>How the records above are written; made by the compiler, so that nothing is looked up while running.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(DraftJson))]
[JsonSerializable(typeof(AnimalJson))]
[JsonSerializable(typeof(OfHerdJson))]
[JsonSerializable(typeof(HerdJson))]
[JsonSerializable(typeof(NotJudgedJson))]
[JsonSerializable(typeof(ProblemsJson))]
[JsonSerializable(typeof(CheckJson))]
[JsonSerializable(typeof(RecordsJson))]
[JsonSerializable(typeof(PromisesJson))]
[JsonSerializable(typeof(CompareJson))]
[JsonSerializable(typeof(LogEntry))]
[JsonSerializable(typeof(TuneJson))]
[JsonSerializable(typeof(VerifyJson))]
[JsonSerializable(typeof(PlanJson))]
internal sealed partial class JsonShapes : JsonSerializerContext
{
    /// <summary>With apostrophes and letters of every script as they are: the output is a file, not part of a web page.</summary>
    public static JsonShapes Readable { get; } = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });

    /// <summary>The same on one line, without spaces.</summary>
    public static JsonShapes OneLine { get; } = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });
}
