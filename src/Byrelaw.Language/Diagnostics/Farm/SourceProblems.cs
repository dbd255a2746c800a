namespace Byrelaw.Language.Diagnostics;

/// <summary>What can be wrong with <c>from</c> and the lines below it.</summary>
internal static class SourceProblems
{
    public static Diagnostic NotBelowRecords(SourceSpan at) => Problem.Error(
        "B0861", at, "this `from` does not stand below `records`", "a source of records is one of a farm's own", "put it below the lines of `records`, in the programme's own file");

    public static Diagnostic NoRowForEach(SourceSpan at) => Problem.Error(
        "B0862", at, "this does not say what a row is about", "expected `a row for each animal` or `a row for each event`",
        $"write it behind the file's name: `{at.Text}, a row for each event`");

    public static Diagnostic TooMany(SourceSpan at, int most) => Problem.Error(
        "B0875", at, $"a farm's records have more than {most} sources", "the ones from here on are not read, and what they could say is not known of anyone",
        "put files of one form together into one");

    public static Diagnostic UnknownTarget(SourceSpan at, SourceRows rows, string? near) => Problem.Error(
        "B0863", at, $"{Quoted.Of(at)} is nothing that the records hold",
        rows == SourceRows.Animals
            ? "expected `animal`, `born`, `sex`, `mob`, `parity`, `parity on`, `herd`, `kind`, a fact, a kind of record or a detail"
            : "expected `date`, `animal`, `kind`, `value`, `unit`, `note`, `recorded`, `sample`, `herd`, a kind of record or a detail",
        near is null ? null : $"did you mean `{near}`?")
        .OrAny(near is null ? [] : [new Proposal(at, near)]);

    public static Diagnostic FactOfAnEvent(SourceSpan at) => Problem.Error(
        "B0864", at, $"{Quoted.Of(at)} is true of an animal, and has no day", "a row for each event says what happened on a day", "read it from a source with `a row for each animal`");

    public static Diagnostic WhichDay(SourceSpan at, string name) => Problem.Error(
        "B0865", at, name == "kind" ? "nothing says on which day what stands here happened" : $"nothing says of which day the result of {Quoted.Of(name)} is",
        $"in a row for each animal {(name == "kind" ? "what happened" : "a result")} has its day in a column of its own, or one day for all",
        $"write `{at.Text}, dated in \"...\"`, or `dated` and a day");

    public static Diagnostic Lacks(SourceSpan at, string column) => Problem.Error(
        "B0866", at, $"nothing says where {Quoted.Of(column)} stands", "without it no row can be read",
        column == "kind" ? "add a line such as `kind in \"Code\"`, or one with the name of a kind, such as `serum copper in \"Cu\", in umol/L`" : $"add a line such as `{column} in \"...\"`");

    public static Diagnostic SaidTwice(SourceSpan at, string name, SourceSpan first) => Problem.Error(
        "B0867", at, $"{Quoted.Of(name)} is read from two columns", $"one is enough: it is read in line {first.Line} already");

    public static Diagnostic CellTwice(SourceSpan at, SourceSpan first) => Problem.Error(
        "B0868", at, "this text is given a meaning twice", $"one is enough: it has one in line {first.Line} already");

    public static Diagnostic DoesNotGoWith(SourceSpan at, string name) => Problem.Error(
        "B0869", at, $"{Quoted.Of(at)} does not go with {Quoted.Of(name)}", "`dated` goes with a result or `kind` in a row for each animal, `by` with `animal`, `as at` with `parity`, "
        + "`in` and `times` with numbers, `pending` and an answer with a result");

    public static Diagnostic TwoCommas(SourceSpan at) => Problem.Error(
        "B0888", at, "a comma stands before the tenths and between thousands both", "so that nobody can tell what 1,500 is", "take `decimal comma` or `thousands comma` out");

    public static Diagnostic NotFoundBy(SourceSpan at) => Problem.Error(
        "B0870", at, $"no animal is found by {Quoted.Of(at)}", "expected a fact that is an identity or a text, such as `official identity`; or `number`, which finds her whatever zeros stand in front");

    public static Diagnostic UnknownLetters(SourceSpan at) => Problem.Error(
        "B0871", at, $"{Quoted.Of(at)} is no way of writing letters that is read", "expected `UTF-8`, `UTF-16`, `Windows-1252` or `ISO-8859-1`");

    public static Diagnostic NotAHeadingRow(SourceSpan at) => Problem.Error(
        "B0872", at, $"{Quoted.Of(at)} names no row", "rows are counted from 1, to 1000; the first one named is not below the last");

    public static Diagnostic CannotBeComplete(SourceSpan at, string kind, bool isOneAnAnimal) => Problem.Error(
        "B0873", at, isOneAnAnimal ? $"{Quoted.Of(kind)} stands only in a source with a row for each animal, which holds one of them and not all" : $"no source can give {Quoted.Of(kind)}",
        "so this promise does not count", isOneAnAnimal ? $"read it from a source with a row for each event; or take it out of the promise, and where the sheet holds the last one, write `last {kind} in`: then each animal counts from hers" : $"say in which source it stands; where there is none, write `no {kind} on this farm`");

    public static Diagnostic SaysOtherwise(SourceSpan at, string said) => Problem.Error(
        "B0874", at, at.Text.Trim('"').Trim().Length == 0 ? $"a blank cell says nothing, and would be read as {Quoted.Of(said)}" : $"{Quoted.Of(at)} says something else by itself, and would be read as {Quoted.Of(said)}", "a text that says what it means is read as just that",
        "take this line out; if the file does mean something else by it, write so in the records themselves");

    public static Diagnostic NoLast(SourceSpan at, string name, SourceRows rows) => Problem.Error(
        "B0880", at, $"`last` cannot stand before {Quoted.Of(name)} here", rows == SourceRows.Events
            ? "it goes with a row for each animal; a row for each event holds all of them"
            : "it goes with what happens to one animal by herself: not with coming and going, mobs, or a bull's coming and going");

    public static Diagnostic LastUpToWhen(SourceSpan at, string name) => Problem.Error(
        "B0881", at, $"nothing says up to which day this is the last {name}", "without that day nobody can tell how long none came after it",
        "say of which day the rows are true: `as at` and a day behind the file's name");

    public static Diagnostic NoSuchLast(SourceSpan at, string since) => Problem.Error(
        "B0882", at, $"no column of this source holds the last {since}", $"`none since last {since}` counts from the day that stands in the same row", $"add a line such as `last {since} in \"...\"`");

    public static Diagnostic DashIsBlank(SourceSpan at) => Problem.Warning(
        "B0883", at, "a lone dash is taken for an answer", "in most books it says that nothing was done; then it is blank", "where it does, write `- \"-\" is blank`, or take this line out");

    public static Diagnostic NoSuchLayout(SourceSpan at) => Problem.Error(
        "B0884", at, $"there is no layout {Quoted.Of(at)}", "one is built in, `ICAR ADE`", "say below it what stands where, behind `a row for each animal` or `a row for each event`");

    public static Diagnostic NoSuchZone(SourceSpan at) => Problem.Error(
        "B0885", at, $"{Quoted.Of(at)} is no time zone", "expected one of the IANA time zones, such as `Pacific/Auckland` or `Europe/Dublin`");

    public static Diagnostic NotOfALayout(SourceSpan at) => Problem.Error(
        "B0886", at, $"{Quoted.Of(at)} does not go with messages", "with `as layout` go `times in`, `up to`, and lines such as `kind in \"what\"` with the bullets below them");

    public static Diagnostic TimesOfAText(SourceSpan at) => Problem.Error(
        "B0887", at, $"{Quoted.Of(at)} goes with messages", "dates of a text or a workbook are the farm's own days", "take it out, or say `as layout \"ICAR ADE\"`");
}
